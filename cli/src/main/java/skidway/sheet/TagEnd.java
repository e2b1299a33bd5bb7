package skidway.sheet;

import java.util.List;

/** Says which end of a bundle a tag belongs on, so that it is turned the right way on the hook. */
final class TagEnd {
  private TagEnd() {}

  /**
   * @param narrow whether there is room for few words on a line, but for three lines
   */
  static List<String> lines(TagPlace place, int end, boolean narrow) {
    String turn = "End " + end + " of 2";
    if (!(place instanceof TagPlace.Stacked stacked)) {
      return List.of(turn, "either way round");
    }
    String points = "points " + stacked.ends().get(end - 1);
    String hand = (end == 1 ? "left" : "right") + ", from open side";
    return narrow ? List.of(turn, points, hand) : List.of(turn + ", " + points, hand);
  }
}
