package skidway.sheet;

import java.util.List;
import java.util.stream.Collectors;
import skidway.timber.Piece;

/** Says shortly which walls and courses the pieces of a bundle belong to. */
final class InsideWords {
  private static final int MOST_WALLS = 6;

  private InsideWords() {}

  static String of(List<Piece> pieces) {
    if (pieces.isEmpty()) {
      return "no piece listed";
    }
    List<String> walls = pieces.stream().map(Piece::wallId).distinct().toList();
    String named = walls.stream().limit(MOST_WALLS).collect(Collectors.joining(", "));
    String more = walls.size() > MOST_WALLS ? " and " + (walls.size() - MOST_WALLS) + " more" : "";
    String wall = walls.size() == 1 ? "Wall " : "Walls ";
    return wall + named + more + "; " + courses(pieces);
  }

  /** Runs are told by their ends: "courses 1 to 3, 7". */
  private static String courses(List<Piece> pieces) {
    List<Integer> all = pieces.stream().map(Piece::course).distinct().sorted().toList();
    StringBuilder words = new StringBuilder(all.size() == 1 ? "course " : "courses ");
    int from = 0;
    for (int i = 0; i < all.size(); i++) {
      boolean ends = i + 1 == all.size() || all.get(i + 1) > all.get(i) + 1;
      if (ends) {
        String join = i == from ? "" : i == from + 1 ? ", " : " to ";
        words.append(from == 0 ? "" : ", ").append(all.get(from));
        words.append(join).append(join.isEmpty() ? "" : all.get(i));
        from = i + 1;
      }
    }
    return words.toString();
  }
}
