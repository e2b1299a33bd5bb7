package skidway.sheet;

import java.util.List;
import skidway.site.Spot;
import skidway.units.Figures;

/**
 * A card beside a stack: its code and mass, and its bundles seen from the side, one over the other
 * on bearers; in a rack side by side.
 *
 * @param slim whether the mass stands below the bundles instead of beside the code
 */
record TierCard(StackView stack, Figures figures, boolean slim) {
  private static final Type CODE = Type.bold(3.6);
  private static final Type MASS = Type.plain(2.6);
  private static final int MOST_CHARACTERS = 24;
  private static final int RACK_COLUMNS = 3;
  private static final double HEAD = 4.6;
  private static final double FOOT = 3.2;
  private static final double ROW = 4;
  private static final double BEARER = 0.9;
  private static final double PADDING = 0.7;
  private static final double SWATCH = 4;

  private Type type() {
    int longest = stack.tiers().stream().mapToInt(t -> t.bundleId().length()).max().orElse(0);
    return Type.bold(longest > 12 ? 2.3 : 3);
  }

  private static String shown(Tier tier) {
    return Lettering.shortened(tier.bundleId(), MOST_CHARACTERS);
  }

  private String mass() {
    return figures.mass(stack.massKg());
  }

  private double cell() {
    double text = stack.tiers().stream().mapToDouble(t -> type().widthMm(shown(t))).max().orElse(0);
    return SWATCH + text + 1.4;
  }

  private int columns() {
    return stack.rack() ? Math.min(RACK_COLUMNS, Math.max(1, stack.tiers().size())) : 1;
  }

  private int rows() {
    return (stack.tiers().size() + columns() - 1) / columns();
  }

  double width() {
    double code = Plate.width(code(), CODE.sizeMm());
    double mass = MASS.widthMm(mass());
    double head = slim ? Math.max(code, mass) : code + mass + 1.2;
    return Math.max(head, cell() * columns()) + 2 * PADDING;
  }

  private String code() {
    return Lettering.shortened(stack.spot().id(), MOST_CHARACTERS);
  }

  double height() {
    return HEAD + rows() * (ROW + BEARER) + PADDING + 0.4 + (slim ? FOOT : 0);
  }

  void draw(Drawing drawing, Box box) {
    Spot spot = stack.spot();
    drawing.open("card", "data-card", spot.id()).hint(spot.id());
    drawing.rect(
        box, "fill", Palette.PAPER, "stroke", Palette.INK, "stroke-width", "0.3", "rx", "0.8");
    double plate = Plate.width(code(), CODE.sizeMm());
    PagePoint head = new PagePoint(box.x0() + PADDING + plate / 2, box.y0() + 2.6);
    new Plate(code(), head, CODE.sizeMm(), 0, false).draw(drawing);
    double level = slim ? box.y1() - FOOT / 2 - 0.3 : head.y();
    PagePoint right = new PagePoint(box.x1() - PADDING - 0.3, level);
    drawing.text(mass(), right, MASS.toTheRight());
    double cell = (box.width() - 2 * PADDING) / columns();
    List<Tier> tiers = stack.rack() ? stack.tiers() : stack.fromTheTop();
    for (int i = 0; i < tiers.size(); i++) {
      double x = box.x0() + PADDING + cell * (i % columns());
      int row = i / columns();
      double y = box.y0() + HEAD + 0.4 + (ROW + BEARER) * row;
      bundle(drawing, tiers.get(i), Box.at(x, y, cell, ROW));
    }
    drawing.close();
  }

  private void bundle(Drawing drawing, Tier tier, Box box) {
    Swatch.draw(drawing, tier.loadTurn(), Box.at(box.x0(), box.y0(), SWATCH, box.height()));
    drawing.rect(box, "fill", "none", "stroke", Palette.INK, "stroke-width", "0.3");
    drawing.open("bundle").hint(tier.bundleId());
    PagePoint at = new PagePoint(box.x0() + SWATCH + 0.7, box.centre().y());
    drawing.text(shown(tier), at, type());
    drawing.close();
    if (!stack.rack()) {
      for (double share : new double[] {0.18, 0.82}) {
        PagePoint foot = new PagePoint(box.x0() + box.width() * share, box.y1() + BEARER / 2);
        drawing.rect(Box.around(foot, 1.1, BEARER), "fill", Palette.INK);
      }
    }
  }
}
