package skidway.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import skidway.units.Figures;

/**
 * A stack seen from the side: its code, what it weighs at most, and its bundles one over the other
 * on bearers with the number of their tier; in a rack side by side. A tall stack is cut into
 * several cards.
 *
 * @param top number of the highest tier on this card, 1 for the lowest of the stack
 * @param bottom number of the lowest tier on this card
 * @param names lines of each bundle's name, in the order in which they are drawn: cut once, because
 *     a card's height is asked for again and again until a panel fits
 */
record StackCard(StackView stack, int top, int bottom, Figures figures, List<List<String>> names)
    implements PanelItem {
  private static final int MOST_TIERS = 12;
  private static final int RACK_COLUMNS = 2;
  private static final double HEAD = 6.6;
  private static final double ROW = 5;
  private static final double LINE = 3.4;
  private static final double BEARER = 1;
  private static final double GAP = 2.4;
  private static final double SWATCH = 5.6;
  private static final double CODE_SIZE = 5;
  private static final Type MASS = Type.bold(3.4);
  private static final Type TIER = Type.plain(2.9);
  private static final double LARGEST = 3.8;
  private static final double SMALLEST = 2.6;

  /** All cards of a stack, highest tiers first. */
  static List<StackCard> of(StackView stack, Figures figures) {
    int tiers = stack.tiers().size();
    List<StackCard> all = new ArrayList<>();
    for (int top = tiers; top > 0 || all.isEmpty(); top -= MOST_TIERS) {
      all.add(cut(stack, top, Math.max(1, top - MOST_TIERS + 1), figures));
    }
    return all;
  }

  private static StackCard cut(StackView stack, int top, int bottom, Figures figures) {
    StackCard nameless = new StackCard(stack, top, bottom, figures, List.of());
    List<List<String>> names =
        IntStream.rangeClosed(0, top - bottom)
            .mapToObj(turn -> nameless.lines(nameless.number(turn)))
            .toList();
    return new StackCard(stack, top, bottom, figures, names);
  }

  @Override
  public double heightMm() {
    double rows = 0;
    for (int row = 0; row < rows(); row++) {
      rows += rowMm(row) + BEARER;
    }
    return HEAD + rows + GAP;
  }

  /** A row that holds a long name is as high as its lines. */
  private double rowMm(int row) {
    int most = 1;
    for (int i = row * columns(); i < Math.min((row + 1) * columns(), names.size()); i++) {
      most = Math.max(most, names.get(i).size());
    }
    return ROW + (most - 1) * LINE;
  }

  /** Number of a tier by its turn in the drawing, which begins at the upper left. */
  private int number(int turn) {
    return stack.rack() ? bottom + turn : top - turn;
  }

  private int columns() {
    return stack.rack() ? RACK_COLUMNS : 1;
  }

  private int rows() {
    return (top - bottom + columns()) / columns();
  }

  @Override
  public void draw(Drawing drawing, PagePoint at) {
    String code = stack.spot().id();
    drawing.open("card", "data-card", code).hint(code);
    head(drawing, at);
    double y = at.y() + HEAD;
    for (int row = 0; row < rows(); row++) {
      for (int column = 0; column < columns(); column++) {
        int turn = row * columns() + column;
        if (turn < names.size()) {
          Box box = Box.at(at.x() + cellMm() * column, y, cellMm(), rowMm(row));
          bundle(drawing, number(turn), names.get(turn), box);
        }
      }
      y += rowMm(row) + BEARER;
    }
    drawing.close();
  }

  private double cellMm() {
    return Panel.COLUMN / columns();
  }

  private String level(int number) {
    return stack.rack() ? "" : "tier " + number;
  }

  private double roomMm(int number) {
    return cellMm() - SWATCH - 2.4 - TIER.widthMm(level(number));
  }

  /** The bundle's name in one line if it fits, else in lines of small letters. */
  private List<String> lines(int number) {
    String id = stack.tiers().get(number - 1).bundleId();
    return Lettering.cut(id, SMALLEST, true, roomMm(number));
  }

  private void head(Drawing drawing, PagePoint at) {
    String mass = figures.mass(stack.massKg());
    double level = at.y() + HEAD / 2 - 0.3;
    double room = Panel.COLUMN - MASS.widthMm(mass) - 3;
    String code = stack.spot().id();
    double size = CODE_SIZE;
    while (size > SMALLEST && Plate.width(code, size) > room) {
      size -= 0.4;
    }
    double writing = room - Plate.width("", size);
    String shown = Lettering.fitted(code, size, true, writing);
    PagePoint middle = new PagePoint(at.x() + Plate.width(shown, size) / 2, level);
    new Plate(shown, middle, size, 0, false).draw(drawing);
    drawing.text(mass, new PagePoint(at.x() + Panel.COLUMN, level), MASS.toTheRight());
  }

  private void bundle(Drawing drawing, int number, List<String> lines, Box box) {
    Tier tier = stack.tiers().get(number - 1);
    Swatch.draw(drawing, tier.loadTurn(), Box.at(box.x0(), box.y0(), SWATCH, box.height()));
    drawing.rect(box, "fill", "none", "stroke", Palette.INK, "stroke-width", "0.35");
    PagePoint right = new PagePoint(box.x1() - 0.9, box.centre().y());
    if (!stack.rack()) {
      drawing.text(level(number), right, TIER.toTheRight());
    }
    double size = LARGEST;
    while (size > SMALLEST && widest(lines, size) > roomMm(number)) {
      size -= 0.2;
    }
    drawing.open("bundle").hint(tier.bundleId());
    double y = box.centre().y() - LINE * (lines.size() - 1) / 2;
    for (String line : lines) {
      drawing.text(line, new PagePoint(box.x0() + SWATCH + 0.9, y), Type.bold(size));
      y += LINE;
    }
    drawing.close();
    if (!stack.rack()) {
      for (double share : new double[] {0.14, 0.86}) {
        PagePoint foot = new PagePoint(box.x0() + box.width() * share, box.y1() + BEARER / 2);
        drawing.rect(Box.around(foot, 1.6, BEARER), "fill", Palette.INK);
      }
    }
  }

  private static double widest(List<String> lines, double size) {
    return lines.stream().mapToDouble(Type.bold(size)::widthMm).max().orElse(0);
  }
}
