package skidway.staging;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.rack;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.StringLength;
import net.jqwik.api.constraints.UniqueElements;
import org.junit.jupiter.api.Test;
import skidway.site.Outline;
import skidway.site.Spot;
import skidway.site.Yard;
import skidway.testkit.SiteBuilder;

class SpotCodesTest {
  private static List<String> codes(SiteBuilder site, Spot... spots) {
    Board board =
        Boards.board(task(site.build(), aBundle("B1").piece("W1", 1, 1, 2).build()), spots);
    List<Integer> all = IntStream.range(0, spots.length).boxed().toList();
    return new SpotCodes(board.task)
        .name(board, all, List.of()).values().stream().map(Spot::id).toList();
  }

  @Test
  void spotsAreCountedFromTheTopLeftWithinTheirZone() {
    assertThat(
            codes(
                aSite(),
                spot("a", "yard", 20, 7, 4, 1),
                spot("b", "yard", 10, 7, 4, 1),
                spot("c", "yard", 10, 11, 4, 1),
                spot("d", "deck", 15, 20, 4, 1),
                rack("e", "deck", 15, 22, 2, 1)))
        .containsExactly("DER1", "DE1", "Y1", "Y2", "Y3"); // the door is called D1
  }

  @Test
  void codesAreKeptApartFromOtherNames() {
    // The walls are W1 to W4, so a zone called "west" may not count W1, W2, ...
    SiteBuilder site = aSite().yards(new Yard("west", Outline.box(5, 6, 30, 12), 70));
    assertThat(codes(site, spot("a", "west", 10, 8, 4, 1))).containsExactly("WE1");
  }

  @Property(seed = "20310505", tries = 200)
  void noTwoSpotsEverShareACode(
      @ForAll @Size(min = 1, max = 6) @UniqueElements
          List<@StringLength(min = 1, max = 4) @Chars({'a', 'A', 'r', 'x', '1', '2', '-'}) String>
              zones) {
    SiteBuilder site =
        aSite()
            .yards(
                zones.stream()
                    .map(id -> new Yard(id, Outline.box(5, 6, 30, 12), 70))
                    .toArray(Yard[]::new));
    List<Spot> spots = new ArrayList<>();
    for (String zone : zones) {
      for (int i = 0; i < 12; i++) {
        spots.add(spot("s" + spots.size(), zone, 6 + i, 8, 0.8, 1));
        spots.add(rack("s" + spots.size(), zone, 6 + i, 10, 0.8, 1));
      }
    }
    List<String> codes = codes(site, spots.toArray(Spot[]::new));
    Set<String> folded = new HashSet<>();
    codes.forEach(code -> folded.add(code.toUpperCase(Locale.ROOT)));
    assertThat(folded).hasSameSizeAs(spots);
  }
}
