package skidway.sheet;

import java.util.List;
import skidway.site.Footprint;
import skidway.site.Spot;
import skidway.timber.Bundle;

/** Draws a stack seen from above: its spot, its bundles to scale, its open side. */
final class StackArt {
  private StackArt() {}

  static void draw(Drawing drawing, StackView stack, Frame frame) {
    Spot spot = stack.spot();
    drawing.open(stack.rack() ? "rack" : "stack", "data-spot", spot.id());
    List<PagePoint> corners = frame.at(spot.footprint().outline());
    String fill = stack.rack() ? Palette.PAPER : Palette.YARD;
    String weight = stack.rack() ? "0.7" : "0.25";
    drawing.polygon(corners, "fill", fill, "stroke", Palette.INK, "stroke-width", weight);
    if (stack.rack()) {
      Hatch.rack(-spot.footprint().headingDeg()).draw(drawing, corners);
    } else {
      stack.tiers().forEach(tier -> bundle(drawing, tier, spot.footprint(), frame));
    }
    openEdge(drawing, spot, frame);
    drawing.close();
  }

  /** A place where bundles only wait: an empty frame. */
  static void drawWaiting(Drawing drawing, Spot spot, Frame frame) {
    drawing.open("waiting", "data-spot", spot.id());
    drawing.polygon(
        frame.at(spot.footprint().outline()),
        "fill",
        Palette.PAPER,
        "stroke",
        Palette.INK,
        "stroke-width",
        "0.6",
        "stroke-dasharray",
        "1.8 1.1");
    drawing.close();
  }

  /** The open strips of all stacks; drawn first, because they may share ground. */
  static void drawStrips(Drawing drawing, List<StackView> stacks, Frame frame) {
    drawing.open("strips");
    stacks.forEach(stack -> strip(drawing, stack.spot(), frame));
    stacks.stream()
        .map(StackView::spot)
        .filter(spot -> spot.stripM() > 0)
        .forEach(spot -> Soles.draw(drawing, spot, frame));
    drawing.close();
  }

  private static void strip(Drawing drawing, Spot spot, Frame frame) {
    if (!(spot.stripM() > 0)) {
      return;
    }
    drawing.polygon(
        frame.at(spot.strip().outline()),
        "fill",
        Palette.PAPER,
        "stroke",
        Palette.SOFT_INK,
        "stroke-width",
        "0.2",
        "stroke-dasharray",
        "0.5 0.9");
  }

  private static void bundle(Drawing drawing, Tier tier, Footprint spot, Frame frame) {
    if (tier.bundle().isEmpty()) {
      return;
    }
    Bundle bundle = tier.bundle().get();
    if (bundle.lengthM() > 0 && bundle.widthM() > 0) {
      LoadLook.fill(
          drawing,
          tier.loadTurn(),
          frame.at(spot.resized(bundle.lengthM(), bundle.widthM()).outline()));
    }
  }

  private static void openEdge(Drawing drawing, Spot spot, Frame frame) {
    Footprint area = spot.footprint();
    var middle = area.centre().plus(spot.towardsOpenSide().times(area.widthM() / 2));
    var half = area.along().times(area.lengthM() / 2);
    drawing.polyline(
        List.of(frame.at(middle.minus(half)), frame.at(middle.plus(half))),
        "stroke",
        Palette.INK,
        "stroke-width",
        "1.1");
  }
}
