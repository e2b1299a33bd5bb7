package skidway.sheet;

import java.util.List;
import skidway.units.Figures;

/** The same as a card, as lines of the panel, for a stack that has no room for a card. */
record TierLines(StackView stack, Figures figures) implements PanelItem {
  private static final double LINE = 4;
  private static final double CODE = 15;
  private static final Type ID = Type.bold(2.6);
  private static final double LEAST = 1.8;
  private static final Type MASS = Type.plain(2.3);

  @Override
  public double heightMm() {
    return Math.max(1, stack.tiers().size()) * LINE + 1;
  }

  @Override
  public void draw(Drawing drawing, PagePoint at) {
    String code = stack.spot().id();
    drawing.open("card", "data-card", code).hint(code);
    double size = 3;
    while (size > 1.6 && Plate.width(code, size) > CODE) {
      size -= 0.2;
    }
    String shown = Lettering.fitted(code, size, true, CODE - 2);
    double plate = Plate.width(shown, size);
    PagePoint middle = new PagePoint(at.x() + plate / 2, at.y() + LINE / 2);
    new Plate(shown, middle, size, 0, false).draw(drawing);
    String mass = figures.mass(stack.massKg());
    PagePoint right = new PagePoint(at.x() + Panel.COLUMN, middle.y());
    drawing.text(mass, right, MASS.toTheRight());
    double room = Panel.COLUMN - CODE - 5.5 - MASS.widthMm(mass) - 1;
    List<Tier> tiers = stack.fromTheTop();
    for (int i = 0; i < tiers.size(); i++) {
      double y = at.y() + LINE * i + LINE / 2;
      Swatch.draw(
          drawing,
          tiers.get(i).loadTurn(),
          Box.around(new PagePoint(at.x() + CODE + 2.4, y), 4, 3.4));
      drawing.open("bundle").hint(tiers.get(i).bundleId());
      String id = tiers.get(i).bundleId();
      double fits = ID.sizeMm() * room / Math.max(room, ID.widthMm(id));
      Type type = Type.bold(Math.max(LEAST, fits));
      String shownId = Lettering.fitted(id, type.sizeMm(), true, room);
      drawing.text(shownId, new PagePoint(at.x() + CODE + 5.2, y), type);
      drawing.close();
    }
    drawing.close();
  }
}
