package skidway.cli;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import skidway.plan.Stack;
import skidway.progress.AsPlanned;
import skidway.progress.Event;
import skidway.progress.Through;
import skidway.site.Spot;
import skidway.site.SpotKind;
import skidway.timber.Piece;
import skidway.units.Nearest;

/** Turns a sentence into events, by how the job stands. Whether they can be is not judged here. */
final class Recorder {
  private static final Pattern RANGE = Pattern.compile("(\\d{1,6})(?:-(\\d{1,6}))?");

  private final Standing standing;
  private final Sentence said;
  private final LocalDateTime at;
  private final String by;
  private final List<Event> events = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();

  Recorder(Standing standing, Sentence said, LocalDateTime at, String by) {
    this.standing = standing;
    this.said = said;
    this.at = at;
    this.by = by;
  }

  /** What was left out and why, as sentences. */
  List<String> notes() {
    return notes;
  }

  /**
   * The events that the sentence means.
   *
   * @throws BadUsage if it lacks something or has too much
   */
  List<Event> events() {
    boolean stacks = List.of(Sentence.Kind.PLACED, Sentence.Kind.MOVED).contains(said.kind());
    refuse(!stacks && (said.spot().isPresent() || said.tier().isPresent()), "a spot or tier");
    refuse(!stacks && said.asPlanned(), "'as planned'");
    refuse(said.kind() != Sentence.Kind.LATE && said.until().isPresent(), "a time to wait for");
    refuse(said.kind() != Sentence.Kind.PULLED && said.through().isPresent(), "'through'");
    switch (said.kind()) {
      case ARRIVED -> each("a load", id -> new Event.Arrived(seq(), at, by, id));
      case MISSING -> each("a bundle or piece", id -> new Event.Missing(seq(), at, by, id));
      case DAMAGED -> each("a bundle or piece", id -> new Event.Damaged(seq(), at, by, id));
      case FOUND -> each("a bundle or piece", id -> new Event.Found(seq(), at, by, id));
      case PLACED -> placed();
      case MOVED -> moved();
      case LATE -> late();
      case PULLED -> pulled();
      case UNDO -> undo();
    }
    return List.copyOf(events);
  }

  private BadUsage bad(String what) {
    return Sentence.bad(said.kind(), what);
  }

  private interface Making {
    Event of(String id);
  }

  private int seq() {
    return standing.progress().events().size() + events.size() + 1;
  }

  private void refuse(boolean when, String part) {
    if (when) {
      throw bad("'" + word() + "' takes no place for " + part + ".");
    }
  }

  private void each(String what, Making making) {
    if (said.names().isEmpty()) {
      throw bad("'" + word() + "' needs the name of " + what + ".");
    }
    said.names().forEach(name -> events.add(making.of(name)));
  }

  private void placed() {
    if (said.asPlanned()) {
      refuse(said.spot().isPresent() || said.tier().isPresent(), "a spot beside 'as planned'");
      if (said.names().isEmpty()) {
        throw bad("'placed as planned' needs the name of a load or bundle.");
      }
      said.names().forEach(this::asPlanned);
    } else {
      put("placed");
    }
  }

  private void asPlanned(String name) {
    boolean load = standing.task().delivery().load(name).isPresent();
    if (!load) {
      events.add(asStacked(name));
      return;
    }
    for (AsPlanned.Put put : AsPlanned.of(standing.chosen().plan(), name)) {
      Optional<String> lies = standing.progress().spotOf(put.bundleId());
      boolean ours =
          standing.task().delivery().bundle(put.bundleId()).stream()
              .anyMatch(b -> b.loadId().equals(name));
      if (!ours && lies.isPresent()) {
        events.add(new Event.Moved(seq(), at, by, put.bundleId(), put.spotId(), put.tier()));
      } else if (lies.isPresent()) {
        notes.add("Left out: " + put.bundleId() + " lies already, at " + lies.get() + ".");
      } else if (standing.progress().missing().contains(put.bundleId())) {
        notes.add("Left out: " + put.bundleId() + " is missing.");
      } else {
        events.add(new Event.Placed(seq(), at, by, put.bundleId(), put.spotId(), put.tier()));
      }
    }
    if (events.isEmpty()) {
      throw new BadUsage(
          "By the plan nothing of load "
              + name
              + " is left to be put down; nothing was recorded. Way out: place bundles by name.");
    }
  }

  /** A bundle that is named, or else all that the plan moves. */
  private void moved() {
    boolean named = !said.names().isEmpty() || said.spot().isPresent() || said.tier().isPresent();
    if (!named) {
      movedAsPlanned();
    } else if (said.asPlanned()) {
      throw bad("'moved as planned' means all moves of the plan and takes no name or place.");
    } else {
      put("moved");
    }
  }

  private void movedAsPlanned() {
    List<AsPlanned.Put> moves = AsPlanned.moves(standing.chosen().plan());
    int done = movesDone(moves);
    if (done > 0) {
      notes.add("Left out, done already: the first " + done + " of " + moves.size() + " moves.");
    }
    moves.stream()
        .skip(done)
        .forEach(
            put ->
                events.add(
                    new Event.Moved(seq(), at, by, put.bundleId(), put.spotId(), put.tier())));
    if (events.isEmpty()) {
      throw new BadUsage(
          "By revision "
              + standing.chosen().plan().revision()
              + " nothing that lies is left to be moved; nothing was recorded. Way out: say what was"
              + " moved: moved BUNDLE to SPOT.");
    }
  }

  /** After how many of the moves everything lies as it does now; none if it never does. */
  private int movesDone(List<AsPlanned.Put> moves) {
    Map<String, Optional<String>> now = new HashMap<>();
    Map<String, Optional<String>> then = new HashMap<>();
    for (AsPlanned.Put put : moves) {
      String id = put.bundleId();
      now.put(id, standing.progress().spotOf(id));
      then.put(id, standing.chosen().task().start().stackOf(id).map(s -> s.spot().id()));
    }
    for (int done = 0; done < moves.size(); done++) {
      if (then.equals(now)) {
        return done;
      }
      then.put(moves.get(done).bundleId(), Optional.of(moves.get(done).spotId()));
    }
    return then.equals(now) ? moves.size() : 0;
  }

  private Event asStacked(String bundleId) {
    for (Stack stack : standing.chosen().plan().stacks()) {
      int index = stack.bundleIds().indexOf(bundleId);
      if (index >= 0) {
        int tier = stack.spot().kind() == SpotKind.RACK ? 0 : index + 1;
        return new Event.Placed(seq(), at, by, bundleId, stack.spot().id(), tier);
      }
    }
    throw new BadUsage(
        "The plan has no load and no stacked bundle '"
            + bundleId
            + "'; nothing was recorded. Way out: name a load, or say where it lies: placed "
            + bundleId
            + " at SPOT.");
  }

  /** The spot may follow the bundle without a word between. */
  private void put(String kind) {
    boolean bare = said.spot().isEmpty() && said.names().size() == 2;
    if (!bare && (said.names().size() != 1 || said.spot().isEmpty())) {
      throw bad("'" + kind + "' needs one bundle and one spot.");
    }
    String bundleId = said.names().get(0);
    String spotId = bare ? said.names().get(1) : said.spot().orElseThrow();
    int tier = said.tier().orElseGet(() -> top(spotId));
    events.add(
        kind.equals("placed")
            ? new Event.Placed(seq(), at, by, bundleId, spotId, tier)
            : new Event.Moved(seq(), at, by, bundleId, spotId, tier));
  }

  /** The tier on top of what lies on a spot; 0 in a rack. */
  private int top(String spotId) {
    Spot spot = standing.progress().spots().get(spotId);
    boolean rack = spot != null && spot.kind() == SpotKind.RACK;
    return rack ? 0 : standing.progress().lying().getOrDefault(spotId, List.of()).size() + 1;
  }

  private void late() {
    if (said.names().size() != 1 || said.until().isEmpty()) {
      throw bad("'late' needs one load and until when.");
    }
    String loadId = said.names().get(0);
    LocalDateTime expected =
        standing.task().delivery().load(loadId).isPresent()
            ? standing.progress().expected(loadId)
            : at;
    LocalDateTime until = SiteTime.until(said.until().orElseThrow(), expected);
    events.add(new Event.Late(seq(), at, by, loadId, until));
  }

  private void pulled() {
    if (said.names().isEmpty() == said.through().isEmpty()) {
      throw bad("'pulled' needs either pieces or --through a piece or course.");
    }
    if (said.through().isEmpty()) {
      events.add(new Event.Pulled(seq(), at, by, "", said.names()));
      return;
    }
    String words = said.through().orElseThrow();
    Through through =
        Through.read(standing.task(), words)
            .orElseThrow(
                () ->
                    bad(
                        "'"
                            + words
                            + "' is neither a piece's mark nor a wall's course"
                            + Nearest.hint(words, marks())
                            + "."));
    List<String> withheld =
        through.marks().stream().filter(standing.progress().withheld()::contains).toList();
    if (!withheld.isEmpty()) {
      notes.add("Left out, missing or damaged: " + String.join(", ", withheld) + ".");
    }
    List<String> pulled =
        through.marks().stream()
            .filter(m -> !withheld.contains(m) && !standing.progress().pulled().contains(m))
            .toList();
    events.add(new Event.Pulled(seq(), at, by, through.words(), pulled));
  }

  private List<String> marks() {
    return standing.task().delivery().pieces().stream().map(Piece::mark).toList();
  }

  private void undo() {
    if (said.names().isEmpty()) {
      events.add(new Event.Undo(seq(), at, by, lastInForce()));
    }
    for (String name : said.names()) {
      Matcher m = RANGE.matcher(name);
      if (!m.matches()) {
        throw bad("'undo' needs numbers of the list, such as 5 or 5-13, not '" + name + "'.");
      }
      int first = Integer.parseInt(m.group(1));
      int last = m.group(2) == null ? first : Integer.parseInt(m.group(2));
      int known = standing.progress().events().size();
      if (first > last || last > known) {
        throw new BadUsage(
            "There are no events " + name + "; the list has " + known + ". Nothing was recorded.");
      }
      IntStream.rangeClosed(first, last)
          .map(i -> last - (i - first))
          .forEach(n -> events.add(new Event.Undo(seq(), at, by, n)));
    }
  }

  private int lastInForce() {
    List<Event> all = standing.progress().events();
    for (int i = all.size() - 1; i >= 0; i--) {
      Event event = all.get(i);
      boolean undone = standing.progress().undone().containsKey(event.seq());
      if (!(event instanceof Event.Undo) && !undone) {
        return event.seq();
      }
    }
    throw new BadUsage("Nothing is recorded that could be undone; nothing was recorded.");
  }

  private String word() {
    return said.kind().word();
  }
}
