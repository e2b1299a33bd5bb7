package skidway.layout;

import static skidway.layout.Placing.checkBroken;
import static skidway.layout.Placing.checkLegal;
import static skidway.layout.Placing.deckSpot;
import static skidway.layout.Placing.openDown;
import static skidway.layout.Placing.yardSpot;
import static skidway.testkit.SiteBuilder.aSite;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import skidway.rules.Rule;
import skidway.site.Outline;
import skidway.site.OverheadLine;
import skidway.site.Point;
import skidway.site.Yard;
import skidway.testkit.SiteBuilder;

/** Trenches, power lines, slopes: broken and measured, exactly at the limit, nothing near. */
class GroundHazardsTest {
  @Test
  void excavationEdge() {
    Outline pit = Outline.box(16, 8, 17, 9);
    SiteBuilder unmeasured = aSite().excavation("pit", pit, 0.2, Double.NaN);
    checkLegal(unmeasured, yardSpot(16 - 0.6096 - 2, 8.5));
    checkBroken(unmeasured, yardSpot(16 - 0.6 - 2, 8.5), Rule.EXCAVATION_EDGE, 0.6, 0.6096);
    checkBroken(
        unmeasured, openDown("yard", 15, 8 - 0.3 + 0.2), Rule.EXCAVATION_EDGE, -0.2, 0.6096);
    SiteBuilder deep = aSite().excavation("pit", pit, 0.2, 1.5);
    checkLegal(deep, yardSpot(16 - 1.5 - 2, 8.5));
    checkBroken(deep, yardSpot(16 - 1.4 - 2, 8.5), Rule.EXCAVATION_EDGE, 1.4, 1.5);
    SiteBuilder wide = aSite().excavation("pit", pit, 1.8, 1.5);
    checkLegal(wide, yardSpot(16 - 1.8 - 2, 8.5));
    checkBroken(wide, yardSpot(16 - 1.7 - 2, 8.5), Rule.EXCAVATION_EDGE, 1.7, 1.8);
  }

  @Test
  void overheadLine() {
    SiteBuilder site =
        aSite()
            .overheadLine(
                new OverheadLine(
                    "L", new Point(18, 0), new Point(18, 28), 13_800, OptionalDouble.empty()));
    checkLegal(site, yardSpot(18 - 3.048 - 2, 9));
    checkBroken(site, yardSpot(18 - 3 - 2, 9), Rule.OVERHEAD_LINE, 3, 3.048);
    checkBroken(site, yardSpot(18, 9), Rule.OVERHEAD_LINE, 0, 3.048);
    checkLegal(site, yardSpot(8, 9));
  }

  @Test
  void yardSlope() {
    checkLegal(aSite().yards(sloping(0.05)), yardSpot(12, 9));
    checkBroken(aSite().yards(sloping(0.06)), yardSpot(12, 9), Rule.YARD_SLOPE, 0.06, 0.05);
    checkLegal(aSite().walls().yards(sloping(0.06)), deckSpot(15, 20));
  }

  private static Yard sloping(double slope) {
    return new Yard(
        "yard",
        Outline.box(5, 6, 30, 12),
        70,
        "",
        OptionalDouble.of(slope),
        OptionalDouble.empty());
  }
}
