package skidway.progress;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.progress.Diary.PLAN;
import static skidway.progress.Diary.START;
import static skidway.progress.Diary.TASK;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/**
 * Any events in any order, folded and held against a model that knows nothing but where each bundle
 * was put last: an oracle written without the fold's maps.
 */
class RandomEventsTest {
  private static final List<String> BUNDLES = List.of("B1", "B2", "B3", "B4");
  private static final List<String> SPOTS = List.of("Y1", "YR1", "Y2");
  private static final List<String> MARKS =
      List.of("W1-C1-1", "W1-C1-2", "W1-C2-1", "W2-C1-1", "W2-C2-1", "W3-C1-1");

  /** Three dice for one event. */
  record Throw(int kind, int one, int two) {}

  @Provide
  Arbitrary<List<Throw>> days() {
    return Combinators.combine(
            Arbitraries.integers().between(0, 11),
            Arbitraries.integers().between(0, 30),
            Arbitraries.integers().between(0, 30))
        .as(Throw::new)
        .list()
        .ofMaxSize(50);
  }

  private static Event event(Throw dice, int seq) {
    return event(dice, seq, START.plusMinutes(seq));
  }

  private static Event event(Throw dice, int seq, LocalDateTime at) {
    String bundle = BUNDLES.get(dice.one() % BUNDLES.size());
    String mark = MARKS.get(dice.one() % MARKS.size());
    String spot = SPOTS.get(dice.two() % SPOTS.size());
    int tier = spot.equals("YR1") ? 0 : 1 + dice.two() / 3 % 4;
    String thing = dice.two() % 2 == 0 ? bundle : mark;
    return switch (dice.kind()) {
      case 0 -> new Event.Arrived(seq, at, "x", "L" + (1 + dice.one() % 2));
      case 1, 2, 3, 4 -> new Event.Placed(seq, at, "x", bundle, spot, tier);
      case 5, 6 -> new Event.Moved(seq, at, "x", bundle, spot, tier);
      case 7 -> new Event.Missing(seq, at, "x", thing);
      case 8 -> new Event.Found(seq, at, "x", thing);
      case 9 -> new Event.Damaged(seq, at, "x", thing);
      case 10 -> new Event.Undo(seq, at, "x", 1 + dice.one());
      default -> new Event.Pulled(seq, at, "x", "", List.of(mark));
    };
  }

  /** Records whatever is not refused, as the command does. */
  private static Progress record(List<Throw> dice) {
    Progress progress = Progress.of(TASK, PLAN, List.of());
    for (Throw some : dice) {
      Event event = event(some, progress.events().size() + 1);
      if (progress.check(event).isEmpty()) {
        progress = progress.with(event);
      }
    }
    return progress;
  }

  @Property(seed = "20310505", tries = 150, edgeCases = EdgeCasesMode.NONE)
  void whatWasAcceptedNeverContradictsItself(@ForAll("days") List<Throw> dice) {
    Progress progress = record(dice);
    assertThat(progress.contradictions()).isEmpty();
    assertThat(Progress.of(TASK, PLAN, progress.events()).lying()).isEqualTo(progress.lying());
  }

  /** Recorded up to half an hour late, as in the evening, whatever the order. */
  @Property(seed = "20310505", tries = 150, edgeCases = EdgeCasesMode.NONE)
  void whatWasAcceptedCanHaveHappenedInTheOrderOfItsTimes(@ForAll("days") List<Throw> dice) {
    Progress progress = Progress.of(TASK, PLAN, List.of());
    for (Throw some : dice) {
      int seq = progress.events().size() + 1;
      Event event = event(some, seq, START.plusMinutes(2L * seq - some.two() % 31));
      if (progress.check(event).isEmpty()) {
        progress = progress.with(event);
      }
    }
    Progress told = progress.inOrderOfTimes();
    assertThat(told.contradictions()).isEmpty();
    assertThat(told.lying()).isEqualTo(progress.lying());
    assertThat(told.pulled()).isEqualTo(progress.pulled());
    assertThat(told.arrived()).isEqualTo(progress.arrived());
    assertThat(told.withheld()).isEqualTo(progress.withheld());
    assertThat(told.usedUp()).isEqualTo(progress.usedUp());
  }

  @Property(seed = "20310505", tries = 150, edgeCases = EdgeCasesMode.NONE)
  void everyBundleIsInOnePlaceOnly(@ForAll("days") List<Throw> dice) {
    Progress progress = record(dice);
    List<String> all = new ArrayList<>(progress.onTruck());
    progress.lying().values().forEach(all::addAll);
    all.addAll(progress.usedUp());
    progress.missing().stream().filter(BUNDLES::contains).forEach(all::add);
    assertThat(all.stream().distinct()).containsExactlyInAnyOrderElementsOf(BUNDLES);
    assertThat(all).as("none twice").doesNotHaveDuplicates();
  }

  @Property(seed = "20310505", tries = 150, edgeCases = EdgeCasesMode.NONE)
  void theFoldIsWhatASimpleModelSays(@ForAll("days") List<Throw> dice) {
    Progress progress = record(dice);
    List<Event> counted = Model.counted(progress.events());
    assertThat(progress.pulled()).isEqualTo(Model.pulled(counted));
    assertThat(progress.arrived().keySet()).isEqualTo(Model.arrived(counted));
    for (String bundle : BUNDLES) {
      assertThat(progress.spotOf(bundle).orElse(""))
          .as("%s after %s", bundle, counted)
          .isEqualTo(Model.spotOf(bundle, counted));
    }
  }

  /** Looks back from the end for the last event that says something about a thing. */
  private static final class Model {
    /** Strikes out undone events one at a time, the latest undo first. */
    static List<Event> counted(List<Event> events) {
      List<Event> left = new ArrayList<>(events);
      for (int i = events.size() - 1; i >= 0; i--) {
        if (left.contains(events.get(i)) && events.get(i) instanceof Event.Undo undo) {
          left.removeIf(e -> e.seq() == undo.undone());
          left.remove(undo);
        }
      }
      return left;
    }

    static Set<String> pulled(List<Event> events) {
      return MARKS.stream().filter(m -> pulled(m, events)).collect(Collectors.toSet());
    }

    private static boolean pulled(String mark, List<Event> events) {
      boolean pulled = false;
      for (Event event : events) {
        if (event instanceof Event.Pulled p && p.marks().contains(mark)) {
          pulled = true;
        } else if (event instanceof Event.Damaged d && d.id().equals(mark)) {
          pulled = false;
        }
      }
      return pulled;
    }

    static Set<String> arrived(List<Event> events) {
      Set<String> loads = new TreeSet<>();
      for (Event event : events) {
        if (event instanceof Event.Arrived arrived) {
          loads.add(arrived.loadId());
        }
      }
      return loads;
    }

    /** Where a bundle was put last, unless it went missing or was used up since. */
    static String spotOf(String bundle, List<Event> events) {
      String spot = "";
      for (int i = 0; i < events.size(); i++) {
        Event event = events.get(i);
        if (event instanceof Event.Placed placed && placed.bundleId().equals(bundle)) {
          spot = placed.spotId();
        } else if (event instanceof Event.Moved moved && moved.bundleId().equals(bundle)) {
          spot = moved.spotId();
        } else if (event instanceof Event.Missing missing && missing.id().equals(bundle)) {
          spot = "";
        } else if (usedUp(bundle, event, events.subList(0, i + 1))) {
          spot = "";
        }
      }
      return spot;
    }

    private static boolean usedUp(String bundle, Event now, List<Event> sofar) {
      boolean takes = now instanceof Event.Pulled || now instanceof Event.Missing;
      List<String> marks =
          TASK.delivery().bundle(bundle).orElseThrow().pieces().stream()
              .map(p -> p.mark())
              .toList();
      return takes
          && marks.stream().anyMatch(m -> pulled(m, sofar))
          && marks.stream().allMatch(m -> pulled(m, sofar) || missing(m, sofar));
    }

    private static boolean missing(String mark, List<Event> events) {
      boolean missing = false;
      for (Event event : events) {
        if (event instanceof Event.Missing m && m.id().equals(mark)) {
          missing = true;
        } else if (event instanceof Event.Found f && f.id().equals(mark)) {
          missing = false;
        }
      }
      return missing;
    }
  }
}
