package skidway.progress;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Whether pieces can have been pulled: each lies on site, is sound and was not pulled before. */
final class PullCheck {
  /** Most marks that a sentence names; the rest are counted. */
  private static final int NAMED = 6;

  private final Tally tally;

  PullCheck(Tally tally) {
    this.tally = tally;
  }

  List<Contradiction> pulled(Event.Pulled event) {
    Objections no = new Objections(event);
    if (event.marks().isEmpty()) {
      return no.add("No piece is left to pull there", "nothing needs to be recorded").all();
    }
    if (event.marks().stream().distinct().count() < event.marks().size()) {
      no.add("A piece is named twice", "name each piece once");
    }
    Map<String, List<String>> notDown = new LinkedHashMap<>();
    for (String mark : event.marks()) {
      if (!no.unknown("piece", mark, tally.roll.pieces.keySet(), "name a mark of pieces.csv")) {
        String bundleId = tally.roll.bundleOf(mark);
        if (tally.pulled.containsKey(mark)) {
          no.add(
              "Piece "
                  + mark
                  + " was pulled already, at "
                  + EventWords.time(Roll.known(tally.pulled, mark)),
              "leave it out");
        } else if (tally.withheld(mark)) {
          no.add(
              "Piece " + mark + " is missing or damaged",
              "leave it out, or record 'found' if it turned up, was replaced or is fit");
        } else if (!tally.lies(bundleId)) {
          notDown.computeIfAbsent(bundleId, b -> new ArrayList<>()).add(mark);
        } else {
          no.before(Roll.known(tally.downSince, bundleId), "Bundle " + bundleId + " was put down");
        }
      }
    }
    notDown.forEach((bundleId, marks) -> notDown(no, bundleId, marks));
    return no.all();
  }

  private void notDown(Objections no, String bundleId, List<String> marks) {
    String loadId = tally.roll.bundle(bundleId).loadId();
    boolean here = tally.arrived.containsKey(loadId);
    no.add(
        some(marks)
            + (marks.size() == 1 ? " comes" : " come")
            + " in bundle "
            + bundleId
            + (here ? ", which is not put down yet" : " of load " + loadId + ", not here yet"),
        (here ? "" : "record 'arrived " + loadId + "', then ")
            + "record 'placed "
            + bundleId
            + " at ...' "
            + "first, or leave "
            + (marks.size() == 1 ? "it" : "them")
            + " out");
  }

  private static String some(List<String> marks) {
    String named = String.join(", ", marks.subList(0, Math.min(NAMED, marks.size())));
    return marks.size() <= NAMED ? named : named + " and " + (marks.size() - NAMED) + " more";
  }
}
