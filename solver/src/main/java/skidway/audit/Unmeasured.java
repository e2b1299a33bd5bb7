package skidway.audit;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import skidway.site.Deck;
import skidway.site.JoistDesign;
import skidway.site.Joists;
import skidway.site.KeepClear;
import skidway.site.OverheadLine;
import skidway.site.Site;

/**
 * Tells what nobody said about the ground and the floors in use, so that a rule had to pass, and on
 * whose word joists are as strong as they are taken to be.
 */
final class Unmeasured {
  private Unmeasured() {}

  static List<String> remarks(Scene scene) {
    Site site = scene.task().site();
    Set<String> used =
        scene.allStandings().stream().map(s -> s.spot().zoneId()).collect(Collectors.toSet());
    Stream<String> decks =
        site.decks().stream()
            .filter(deck -> used.contains(deck.id()) && deck.joists().isEmpty())
            .map(deck -> notChecked("joists of " + deck.id(), "joists"));
    Stream<String> timbers =
        site.decks().stream()
            .filter(deck -> used.contains(deck.id()))
            .flatMap(
                deck -> deck.joists().stream().flatMap(joists -> strength(scene, deck, joists)));
    Stream<String> yards =
        site.yards().stream()
            .filter(yard -> used.contains(yard.id()) && yard.slope().isEmpty())
            .map(yard -> notChecked("slope of " + yard.id(), "slope"));
    Stream<String> excavations =
        site.keepClears().stream()
            .filter(keepClear -> keepClear.excavation() && keepClear.depthM().isEmpty())
            .map(KeepClear::id)
            .map(id -> notChecked("depth of excavation " + id, "depth"));
    Stream<String> lines =
        site.overheadLines().stream()
            .filter(line -> new LineClearance(scene).metres(line).isEmpty())
            .map(OverheadLine::id)
            .map(id -> notChecked("clearance of overhead line " + id, "clearance"));
    return Stream.of(decks, timbers, yards, excavations, lines).flatMap(lists -> lists).toList();
  }

  /**
   * A floor's designer told the live load himself; a table's word for a timber he has to confirm.
   */
  private static Stream<String> strength(Scene scene, Deck deck, Joists joists) {
    return joists.design() instanceof JoistDesign.Lumber lumber
        ? Stream.of(
            "The joists of "
                + (deck.id() + " count as " + lumber.name() + " (" + lumber.source() + "), dry,")
                + (" under a floor of " + scene.task().figures().pressure(lumber.deadKpa()))
                + "; the floor's designer confirms it.")
        : Stream.empty();
  }

  private static String notChecked(String what, String field) {
    return "Not checked: " + what + "; needs " + field + ".";
  }
}
