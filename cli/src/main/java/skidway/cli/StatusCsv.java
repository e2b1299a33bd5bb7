package skidway.cli;

import java.util.ArrayList;
import java.util.List;
import skidway.progress.Progress;
import skidway.timber.Piece;

/** Writes how a job stands as comma-separated values; the first column says what a row is about. */
final class StatusCsv {
  private static final String HEAD =
      "list,id,load,wall,state,at,spot,tier,course,pieces,pulled,not_to_hand";

  private StatusCsv() {}

  static List<String> lines(Standing standing) {
    List<String> lines = new ArrayList<>(List.of(HEAD));
    LoadState.all(standing).forEach(load -> lines.add(load(load)));
    List<BundleState> bundles = BundleState.all(standing);
    bundles.forEach(bundle -> lines.add(bundle(bundle)));
    for (BundleState bundle : bundles) {
      for (Piece piece : bundle.bundle().pieces()) {
        lines.add(piece(piece, bundle, standing.progress()));
      }
    }
    WallState.all(standing).forEach(wall -> lines.add(wall(wall)));
    return lines;
  }

  private static String load(LoadState load) {
    return Csv.row(
        "load",
        load.load().id(),
        "",
        "",
        load.state(),
        load.at().toString(),
        "",
        "",
        "",
        "",
        "",
        "");
  }

  private static String bundle(BundleState state) {
    int pieces = state.bundle().packed().size();
    return Csv.row(
        "bundle",
        state.bundle().id(),
        state.bundle().loadId(),
        "",
        state.damaged() ? "damaged" : state.state(),
        "",
        state.spotId(),
        tier(state),
        "",
        Integer.toString(pieces),
        Integer.toString(pieces - state.left() - state.withheld()),
        Integer.toString(state.withheld()));
  }

  private static String piece(Piece piece, BundleState bundle, Progress progress) {
    boolean pulled = progress.pulled().contains(piece.mark());
    boolean withheld = progress.withheld().contains(piece.mark());
    return Csv.row(
        "piece",
        piece.mark(),
        bundle.bundle().loadId(),
        piece.wallId(),
        pulled ? "pulled" : withheld ? "not to hand" : bundle.state(),
        "",
        pulled ? "" : bundle.spotId(),
        pulled ? "" : tier(bundle),
        Integer.toString(piece.course()),
        "",
        "",
        "");
  }

  private static String wall(WallState wall) {
    return Csv.row(
        "wall",
        wall.wallId(),
        "",
        wall.wallId(),
        wall.pulled() == wall.pieces() ? "whole" : "rising",
        "",
        "",
        "",
        Integer.toString(wall.course()),
        Integer.toString(wall.pieces()),
        Integer.toString(wall.pulled()),
        "");
  }

  private static String tier(BundleState state) {
    return state.tier() == 0 ? "" : Integer.toString(state.tier());
  }
}
