package skidway.progress;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Whether an event can be taken back without leaving later ones in the air. */
final class UndoCheck {
  private final Progress before;

  UndoCheck(Progress before) {
    this.before = before;
  }

  List<Contradiction> of(Event.Undo undo) {
    Objections no = new Objections(undo);
    int seq = undo.undone();
    Optional<Event> target = before.events().stream().filter(e -> e.seq() == seq).findFirst();
    if (target.isEmpty()) {
      String known =
          before.events().isEmpty()
              ? "nothing is recorded yet"
              : "events 1 to " + before.events().size() + " are recorded";
      return no.add("There is no event " + seq + "; " + known, "name one of the list").all();
    }
    Map<Integer, Integer> undone = Undone.of(before.events());
    if (undone.containsKey(seq)) {
      int by = undone.getOrDefault(seq, 0);
      return no.add(
              "Event " + seq + " is undone already, by event " + by,
              "to have it back, record 'undo " + by + "'")
          .all();
    }
    upset(no, undo, target.get());
    return no.all();
  }

  /** Names the later events that build on the one taken back (or contradict the one restored). */
  private void upset(Objections no, Event.Undo undo, Event target) {
    Set<Integer> known = new HashSet<>();
    before.contradictions().forEach(c -> known.add(c.seq()));
    List<Contradiction> upset =
        before.with(undo).contradictions().stream().filter(c -> !known.contains(c.seq())).toList();
    if (upset.isEmpty()) {
      return;
    }
    Contradiction first = upset.get(0);
    String latestFirst =
        upset.stream()
            .map(Contradiction::seq)
            .distinct()
            .sorted((a, b) -> b - a)
            .map(String::valueOf)
            .collect(Collectors.joining(" "));
    no.add(
        String.format(
            Locale.ROOT,
            "With event %d (%s) undone, event %d (%s) could not have happened: %s",
            target.seq(),
            EventWords.of(target),
            first.seq(),
            wordsOf(first.seq()),
            first.sentence()),
        "undo what builds on it first, as in 'undo " + latestFirst + "'");
  }

  private String wordsOf(int seq) {
    return before.events().stream()
        .filter(e -> e.seq() == seq)
        .map(EventWords::of)
        .findFirst()
        .orElseThrow();
  }
}
