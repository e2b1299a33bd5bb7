package skidway.audit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import skidway.audit.walk.CarryWalks;
import skidway.rules.Setting;
import skidway.site.Point;
import skidway.timber.Piece;

/** Estimates the crew time of carrying every piece from its spot to its place and walking back. */
final class Carrying {
  private final Scene scene;
  private final Handling handling;
  private final Team team;
  private final CarryWalks walks;
  private final Map<String, Double> byMark = new HashMap<>();
  private double personS;
  private int unreached;

  /** The walk from a piece's spot to its place, one way. */
  private record Walk(Piece piece, double metres) {}

  Carrying(Scene scene, CarryWalks walks, Handling handling) {
    this.scene = scene;
    this.walks = walks;
    this.handling = handling;
    team = new Team(scene);
    // Walks take long and do not depend on each other; they are added up in the plan's order.
    scene.standings().parallelStream()
        .filter(s -> Soundness.sound(s.spot()))
        .map(standing -> walks(standing.spot().access(), pieces(standing)))
        .toList()
        .forEach(stack -> stack.forEach(this::add));
  }

  /** Person-seconds, of the pieces that somebody can get to. */
  double personS() {
    return personS;
  }

  /** The same of one piece; infinite if nobody can get to its place. */
  double personS(Piece piece) {
    return byMark.getOrDefault(piece.mark(), 0.0);
  }

  /** How many pieces nobody can carry to their places. */
  int unreached() {
    return unreached;
  }

  private static List<Piece> pieces(Standing standing) {
    return standing.bundles().stream().flatMap(bundle -> bundle.pieces().stream()).toList();
  }

  /** Of those pieces that have a place. */
  private List<Walk> walks(Point access, List<Piece> all) {
    List<Piece> pieces =
        all.stream().filter(piece -> handling.pullIndex(piece).isPresent()).toList();
    List<Integer> pulls =
        pieces.stream().map(piece -> handling.pullIndex(piece).getAsInt()).toList();
    double[] metres = walks.metres(access, pulls);
    return IntStream.range(0, pieces.size())
        .mapToObj(i -> new Walk(pieces.get(i), metres[i]))
        .toList();
  }

  private void add(Walk walk) {
    double walkS = personS(walk.piece(), walk.metres());
    byMark.put(walk.piece().mark(), walkS);
    if (Double.isFinite(walkS)) {
      personS += walkS;
    } else {
      unreached++;
    }
  }

  /** Of pieces drawn from one place; infinite if nobody can get to one of theirs. */
  double personS(Point access, List<Piece> pieces) {
    return walks(access, pieces).stream()
        .mapToDouble(walk -> personS(walk.piece(), walk.metres()))
        .sum();
  }

  /** There with a piece and back without, so many metres each way. */
  double personS(Piece piece, double metres) {
    return team.people(piece)
        * metres
        * (1 / scene.setting(Setting.LOADED_SPEED) + 1 / scene.setting(Setting.EMPTY_SPEED));
  }
}
