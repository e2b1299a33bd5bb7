package skidway.sheet;

import java.util.List;
import java.util.stream.Stream;
import skidway.plan.Task;
import skidway.site.Spot;

/** Everything on a map with its place on paper, worked out before anything is drawn. */
final class Scene {
  private final MapView view;
  private final Frame frame;
  private final Codes codes;
  private final CornerLetters cornerLetters;
  private final WallNames wallNames;
  private final Names names;

  Scene(MapView view, Frame frame) {
    this.view = view;
    this.frame = frame;
    Task task = view.task();
    List<Spot> spots = view.stacks().stream().map(StackView::spot).toList();
    Labels labels = new Labels(frame.area());
    Obstacles.add(labels, task, frame, spots, view.waiting());
    codes = new Codes(frame, labels);
    spots.forEach(spot -> codes.placeOn(spot, false));
    view.waiting().forEach(spot -> codes.placeOn(spot, true));
    spots.forEach(spot -> codes.placeBeside(spot, false));
    view.waiting().forEach(spot -> codes.placeBeside(spot, true));
    cornerLetters = CornerLetters.place(view.corners(), frame, labels);
    wallNames = WallNames.place(task.site().walls(), frame, labels);
    names = new Names(view, frame, labels);
    names.placeFirst();
    names.placeRest();
  }

  /** Codes and names that found no room on the map. */
  List<String> untold() {
    return Stream.of(codes.untold(), wallNames.untold(), cornerLetters.untold(), names.untold())
        .flatMap(List::stream)
        .toList();
  }

  void draw(Drawing drawing) {
    Task task = view.task();
    drawing.openWindow("map", frame.area());
    Ground.draw(drawing, task, frame);
    Besides.draw(drawing, view, frame);
    House.drawDecks(drawing, task.site(), frame);
    view.waiting().forEach(spot -> StackArt.drawWaiting(drawing, spot, frame));
    StackArt.drawStrips(drawing, view.stacks(), frame);
    view.stacks().forEach(stack -> StackArt.draw(drawing, stack, frame));
    House.drawWalls(drawing, task.site(), frame);
    Stands.draw(drawing, task, frame);
    Overhead.drawLines(drawing, task, frame);
    names.placed().forEach(label -> label.draw(drawing));
    wallNames.draw(drawing);
    cornerLetters.draw(drawing);
    codes.draw(drawing);
    drawing.close();
    drawing.rect(frame.area(), "fill", "none", "stroke", Palette.LANE, "stroke-width", "0.2");
  }
}
