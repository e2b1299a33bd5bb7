package skidway.progress;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;

/** Whether something can be missing, damaged or found, by what is known of it. */
final class PieceCheck {
  private static final String NAME_ONE = "name a bundle of bundles.csv or a mark of pieces.csv";

  private final Tally tally;

  PieceCheck(Tally tally) {
    this.tally = tally;
  }

  List<Contradiction> missing(Event.Missing event) {
    Objections no = new Objections(event);
    String id = event.id();
    if (known(no, id) && notYet(no, id) && !isBundle(id) && tally.pulled.containsKey(id)) {
      no.add(
          "Piece " + id + " was pulled at " + EventWords.time(Roll.known(tally.pulled, id)),
          "undo that if it was not; a pulled piece that came to grief is 'damaged'");
    }
    if (no.none() && isBundle(id) && tally.usedUp(id)) {
      no.add(
          "All pieces of bundle " + id + " are pulled or missing already",
          "undo what was pulled by mistake");
    }
    return no.all();
  }

  List<Contradiction> damaged(Event.Damaged event) {
    Objections no = new Objections(event);
    String id = event.id();
    if (known(no, id) && notYet(no, id) && tally.pulled.containsKey(id) && !isBundle(id)) {
      no.before(Roll.known(tally.pulled, id), "Piece " + id + " was pulled");
    }
    return no.all();
  }

  List<Contradiction> found(Event.Found event) {
    Objections no = new Objections(event);
    String id = event.id();
    if (!known(no, id)) {
      return no.all();
    }
    for (Map<String, LocalDateTime> state : List.of(tally.missing, tally.damaged)) {
      if (state.containsKey(id)) {
        String word = state == tally.missing ? "missing" : "damaged";
        return no.before(Roll.known(state, id), id + " was recorded " + word).all();
      }
    }
    String bundleId = bundleOf(id);
    if (tally.withheld(id)) {
      return no.add(
              "Piece " + id + " is " + stateOf(bundleId) + " with the whole of bundle " + bundleId,
              "record 'found " + bundleId + "', then each piece that still is not to hand")
          .all();
    }
    return no.add(id + " is neither missing nor damaged", "nothing needs to be recorded").all();
  }

  private boolean known(Objections no, String id) {
    return !no.unknown("bundle or piece", id, tally.roll.things(), NAME_ONE);
  }

  /** Objects to what is missing or damaged already, by itself or with its bundle. */
  private boolean notYet(Objections no, String id) {
    if (!stateOf(id).isEmpty()) {
      no.add(
          id + " is recorded " + stateOf(id) + " already",
          "record 'found " + id + "' first if that has changed");
    } else if (!isBundle(id) && !stateOf(bundleOf(id)).isEmpty()) {
      String bundleId = bundleOf(id);
      no.add(
          "Piece " + id + " is " + stateOf(bundleId) + " with the whole of bundle " + bundleId,
          "record 'found " + bundleId + "' first if the rest of it is fine");
    }
    return no.none();
  }

  private String stateOf(String id) {
    return tally.missing.containsKey(id)
        ? "missing"
        : tally.damaged.containsKey(id) ? "damaged" : "";
  }

  private boolean isBundle(String id) {
    return tally.roll.bundles.containsKey(id);
  }

  private String bundleOf(String mark) {
    return tally.roll.bundleOfMark.getOrDefault(mark, "");
  }
}
