package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Holds every colour of map and pages to the contrast that {@link Contrast} cites. */
class ContrastTest {
  private static final List<String> GROUNDS =
      List.of(Palette.PAPER, Palette.DECK, Palette.YARD, Palette.KEEP_CLEAR_MARGIN);
  private static final List<String> TEXTS =
      List.of(Palette.INK, Palette.SOFT_INK, Palette.KEEP_CLEAR);

  /** Lines that are never written with, and the grounds they are drawn on. */
  private static final Map<String, List<String>> LINES =
      Map.of(
          Palette.LANE, GROUNDS, Palette.JOIST, List.of(Palette.DECK, Palette.PAPER, Palette.YARD));

  /** What colours of the style sheets are for; white is both. */
  private static final Set<String> PAGE_TEXTS = Set.of("#000000", "#1d1d1b", "#5c5a55", "#a33f06");

  private static final Set<String> PAGE_GROUNDS =
      Set.of("#ffffff", "#fbf8f1", "#ece7da", "#f3eee2");
  private static final Set<String> PAGE_LINES = Set.of("#857f72", "#777777", "#0b62a8");

  private static final Pattern RULE = Pattern.compile("([^{}]+)\\{([^{}]*)\\}");
  private static final Pattern HEX = Pattern.compile("#[0-9a-fA-F]{3,8}\\b");
  private static final Pattern OTHER_COLOUR =
      Pattern.compile(
          "(?i)\\b(?:rgba?|hsla?|hwb|lab|lch|oklab|oklch|color|color-mix)\\s*\\(|[:\\s](?:white|black"
              + "|red|green|blue|yellow|orange|gr[ae]y|silver|navy|brown|tan|beige|maroon|teal"
              + "|currentcolor)\\s*[;}]");

  @Test
  void knownPairs() {
    // Black on white is 21:1 and a colour on itself 1:1 by the definition of contrast ratio.
    assertThat(Contrast.ratio("#000", "#ffffff")).isEqualTo(21);
    assertThat(Contrast.ratio("#a83f06", "#a83f06")).isEqualTo(1);
    // Worked out by hand from the definition: ((0x77/255 + 0.055)/1.055)^2.4 = 0.18448.
    assertThat(Contrast.ratio("#777777", "#ffffff")).isBetween(4.477, 4.479);
  }

  @Test
  void everyColourOfThePaletteIsATextALineOrAGround() throws IllegalAccessException {
    List<String> used =
        Stream.of(GROUNDS, TEXTS, LINES.keySet()).flatMap(all -> all.stream()).sorted().toList();
    List<String> there = new ArrayList<>();
    for (Field field : Palette.class.getDeclaredFields()) {
      if (field.getType() == String.class) {
        there.add((String) field.get(null));
      }
    }
    assertThat(there.stream().sorted().toList()).isEqualTo(used);
  }

  @Test
  void inksOfTheMapStandOutFromTheirGrounds() {
    for (String text : TEXTS) {
      for (String ground : GROUNDS) {
        assertThat(Contrast.ratio(text, ground))
            .as(text + " on " + ground)
            .isGreaterThanOrEqualTo(Contrast.TEXT);
      }
    }
    LINES.forEach(
        (line, grounds) -> {
          for (String ground : grounds) {
            assertThat(Contrast.ratio(line, ground))
                .as(line + " on " + ground)
                .isGreaterThanOrEqualTo(Contrast.LARGE_TEXT_OR_SIGN);
          }
        });
  }

  @Test
  void rimPatternAndPaperStandOutFromEveryLoad() {
    for (LoadLook look : LoadLook.values()) {
      assertThat(Contrast.ratio(Palette.INK, look.colour()))
          .as(look.name())
          .isGreaterThanOrEqualTo(Contrast.LARGE_TEXT_OR_SIGN);
    }
  }

  @Test
  void textsOfTheDrawingsStandOutFromWhatLiesUnderThem() throws Exception {
    for (String svg : Drawings.ALL) {
      List<DrawnGround.TextOn> texts = DrawnGround.texts(SvgText.parse(svg));
      assertThat(texts).hasSizeGreaterThan(5);
      for (DrawnGround.TextOn text : texts) {
        for (String ground : text.grounds()) {
          assertThat(Contrast.ratio(text.ink(), ground))
              .as(text + " on " + ground)
              .isGreaterThanOrEqualTo(Contrast.leastForText(text.sizeMm(), text.bold()));
        }
      }
    }
  }

  @Test
  void drawingsUseNoOtherColour() {
    Set<String> known = new TreeSet<>(GROUNDS);
    known.addAll(TEXTS);
    known.addAll(LINES.keySet());
    Arrays.stream(LoadLook.values()).map(LoadLook::colour).forEach(known::add);
    for (String svg : Drawings.ALL) {
      assertThat(Pattern.compile("(?:fill|stroke)=\"(?!none)([^\"]+)\"").matcher(svg).results())
          .extracting(m -> m.group(1))
          .isNotEmpty()
          .isSubsetOf(known);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"packet", "tags", "packet in a PDF", "tags in a PDF"})
  void coloursOfThePagesAreKnown(String page) {
    String css = css(page);
    Set<String> known = new TreeSet<>(PAGE_TEXTS);
    known.addAll(PAGE_GROUNDS);
    known.addAll(PAGE_LINES);
    assertThat(HEX.matcher(css).results())
        .extracting(m -> Contrast.full(m.group()))
        .isNotEmpty()
        .isSubsetOf(known);
    assertThat(OTHER_COLOUR.matcher(css).results().map(MatchResult::group)).isEmpty();
  }

  @Test
  void everyTextOfThePagesStandsOutFromEveryGround() {
    for (String ground : PAGE_GROUNDS) {
      for (String text : PAGE_TEXTS) {
        assertThat(Contrast.ratio(text, ground))
            .as(text + " on " + ground)
            .isGreaterThanOrEqualTo(Contrast.TEXT);
      }
      for (String line : PAGE_LINES) {
        assertThat(Contrast.ratio(line, ground))
            .as(line + " on " + ground)
            .isGreaterThanOrEqualTo(Contrast.LARGE_TEXT_OR_SIGN);
      }
    }
  }

  /** White letters need a dark ground in the same rule; other writing may stand on any ground. */
  @ParameterizedTest
  @ValueSource(strings = {"packet", "tags", "packet in a PDF", "tags in a PDF"})
  void writingIsDarkUnlessItBringsADarkGround(String page) {
    String css = css(page);
    int seen = 0;
    for (MatchResult rule : RULE.matcher(css).results().toList()) {
      String ink = value(rule.group(2), "color");
      String ground = value(rule.group(2), "background");
      if (!ink.isEmpty()) {
        seen++;
        if (!PAGE_TEXTS.contains(ink)) {
          assertThat(ground).as(rule.group()).startsWith("#");
          assertThat(Contrast.ratio(ink, ground))
              .as(rule.group())
              .isGreaterThanOrEqualTo(Contrast.TEXT);
        }
      }
      if (ground.startsWith("#") && !PAGE_GROUNDS.contains(ground)) {
        // A dark ground: bars and signs hold no writing but their own.
        assertThat(PAGE_TEXTS).as(rule.group()).contains(ground);
      }
    }
    assertThat(seen).isPositive();
  }

  private static String value(String rule, String property) {
    return Pattern.compile("(?:^|[;{\\s])" + property + ":\\s*(#[0-9a-fA-F]+)")
        .matcher(rule)
        .results()
        .map(m -> Contrast.full(m.group(1)))
        .findFirst()
        .orElse("");
  }

  /** The style sheet with the names of its colours replaced by what they stand for. */
  private static String css(String page) {
    String css =
        switch (page) {
          case "packet" -> PageStyle.css();
          case "tags" -> PageStyle.tags();
          case "packet in a PDF" -> PageStyle.packetInPdf(PaperSize.A4, "");
          default -> PageStyle.tagsInPdf();
        };
    String out = css;
    for (MatchResult name :
        Pattern.compile("--([a-z]+):\\s*(#[0-9a-f]+)").matcher(css).results().toList()) {
      out = out.replace("var(--" + name.group(1) + ")", name.group(2));
    }
    assertThat(out)
        .doesNotContainPattern("(?:color|background|border[a-z-]*|outline|shadow): [^;}]*var\\(");
    return out;
  }
}
