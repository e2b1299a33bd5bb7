package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TagTextTest {
  private static final String TEXT =
      new TagText("Larkhollow house", 3, "a1b2c3d4e5", "B13", "spot D1 tier 2 of 3", 1).written();

  private static TagText tag(String job, String bundle, TagPlace place, int revision, int end) {
    Tag tag = new Tag(bundle, place, "L1", 1, "1 kg", 1, "", List.of(), List.of());
    return TagText.of(new RunningHead(job, revision, "a1b2c3d4e5f60718"), tag, end);
  }

  @Property(tries = 300, seed = "7")
  void whatIsWrittenIsRead(
      @ForAll @StringLength(max = 40) String job,
      @ForAll @StringLength(max = 40) String bundle,
      @ForAll @StringLength(max = 40) String spot,
      @ForAll @IntRange(min = 1, max = 9999) int revision,
      @ForAll boolean rack) {
    TagPlace place =
        rack ? new TagPlace.OnEnd(spot) : new TagPlace.Stacked(spot, 2, 3, List.of("east", "west"));
    TagText tag = tag(job, bundle, place, revision, revision % 2 + 1);
    String written = tag.written();
    assertThat(TagText.read(written)).contains(tag);
    assertThat(TagText.read("\r\n " + written.replace("\n", " \r\n\u00A0") + "\n")).contains(tag);
    assertThat(written.getBytes(StandardCharsets.UTF_8)).hasSizeLessThanOrEqualTo(127);
  }

  @Property(tries = 1000, seed = "7")
  void noTextIsTooOddToBeRefused(@ForAll String text) {
    assertThat(TagText.read(text)).isEmpty();
    assertThat(TagText.read("Skidway 1\njob " + text)).isEmpty();
    assertThat(TagText.read(TEXT.replace("B13", "B13" + text + "x"))).isEmpty();
  }

  @Test
  void everyWrongLetterIsFound() {
    for (int i = 0; i < TEXT.length(); i++) {
      for (char wrong : "a0X7 -ø".toCharArray()) {
        String text = TEXT.substring(0, i) + wrong + TEXT.substring(i + 1);
        boolean same = TagName.oneLine(text).equalsIgnoreCase(TagName.oneLine(TEXT));
        if (!same) {
          assertThat(TagText.read(text)).as(text).isEmpty();
        }
      }
      assertThat(TagText.read(TEXT.substring(0, i))).isEmpty();
    }
  }

  @Test
  void aTextRunTogetherInOneLineIsRead() {
    String line = TEXT.replace("\n", " ");
    assertThat(TagText.read(line)).contains(TagText.read(TEXT).orElseThrow());
  }

  @Test
  void capitalsThatATelephonePutsAtLineStartsAreForgiven() {
    String typed =
        TEXT.replace("\njob", "\nJob").replace("\nspot", "\nSpot").replace("\nend", "\nEnd");
    int at = typed.lastIndexOf(' ');
    String small = typed.substring(0, at) + typed.substring(at).toLowerCase(Locale.ROOT);
    assertThat(TagText.read(small)).contains(TagText.read(TEXT).orElseThrow());
  }

  @ParameterizedTest
  @ValueSource(strings = {"plan 9 a1b2c3d4e5 bundle X no spot", "tier 1 of 2", "on end", "~"})
  void namesThatLookLikeOtherLinesAreKept(String name) {
    TagText tag = tag(name, name, new TagPlace.OnEnd(name), 1, 2);
    assertThat(TagText.read(tag.written())).contains(tag);
  }

  @Test
  void aBundleWithoutASpotSaysSo() {
    TagText tag = tag("House", "B31", new TagPlace.NoSpot(), 1, 1);
    assertThat(tag.written()).contains("\nno spot\n");
    assertThat(TagText.read(tag.written())).contains(tag);
  }

  @Test
  void longNamesThatBeginAlikeStayApart() {
    String one = TagName.bundle("BUNDLE-2031-NORTH-GABLE-1");
    String two = TagName.bundle("BUNDLE-2031-NORTH-GABLE-2");
    assertThat(one).startsWith("BUNDLE-2~").hasSize(14).isNotEqualTo(two);
  }

  @Test
  void accentsAreOneLetterHoweverTheyAreTyped() {
    assertThat(TagName.job("So\u0308hne")).isEqualTo(TagName.job("S\u00F6hne"));
  }
}
