package skidway.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import skidway.plan.Task;
import skidway.site.Spot;

/** Everything on a map with its place on paper, worked out before anything is drawn. */
final class Scene {
  private final Task task;
  private final Frame frame;
  private final List<StackView> stacks;
  private final List<Spot> waiting;
  private final Codes codes;
  private final CornerLetters cornerLetters;
  private final WallNames wallNames;
  private final Names names;
  private final List<PlacedCard> cards;
  private final Set<String> withoutCard = new TreeSet<>();

  /**
   * @param corners that spots are set out from
   * @param inPanel codes of spots whose bundles are told in the panel
   */
  Scene(
      Task task,
      Frame frame,
      List<StackView> stacks,
      List<Spot> waiting,
      List<Reference> corners,
      Set<String> inPanel) {
    this.task = task;
    this.frame = frame;
    this.stacks = stacks;
    this.waiting = waiting;
    Labels labels = new Labels(frame.area());
    Obstacles.add(labels, task, frame, stacks.stream().map(StackView::spot).toList(), waiting);
    codes = new Codes(frame, labels);
    stacks.forEach(stack -> codes.placeOn(stack.spot(), false));
    waiting.forEach(spot -> codes.placeOn(spot, true));
    cornerLetters = CornerLetters.place(corners, frame, labels);
    wallNames = WallNames.place(task.site().walls(), frame, labels);
    names = new Names(task, frame, labels);
    names.placeFirst();
    waiting.forEach(spot -> codes.placeBeside(spot, true));
    List<StackView> wanted = new ArrayList<>();
    for (StackView stack : stacks) {
      if (stack.tiers().isEmpty() || inPanel.contains(stack.spot().id())) {
        codes.placeBeside(stack.spot(), false);
      } else {
        wanted.add(stack);
      }
    }
    cards = CardTable.deal(wanted, new CardPlaces(frame, labels, task.figures()));
    wanted.forEach(stack -> withoutCard.add(stack.spot().id()));
    cards.forEach(placed -> withoutCard.remove(placed.card().stack().spot().id()));
    names.placeRest();
  }

  /** Codes of spots that found no room for a card. */
  Set<String> withoutCard() {
    return withoutCard;
  }

  void draw(Drawing drawing) {
    drawing.open("map");
    Ground.draw(drawing, task, frame);
    House.drawDecks(drawing, task.site(), frame);
    waiting.forEach(spot -> StackArt.drawWaiting(drawing, spot, frame));
    StackArt.drawStrips(drawing, stacks, frame);
    stacks.forEach(stack -> StackArt.draw(drawing, stack, frame));
    House.drawWalls(drawing, task.site(), frame);
    Stands.draw(drawing, task, frame);
    Overhead.drawLines(drawing, task, frame);
    names.placed().forEach(label -> label.draw(drawing));
    wallNames.draw(drawing);
    cornerLetters.draw(drawing);
    cards.forEach(card -> card.draw(drawing));
    codes.draw(drawing);
    drawing.close();
  }
}
