package skidway.sheet;

import java.util.List;
import java.util.Optional;
import skidway.plan.Margin;
import skidway.plan.Task;
import skidway.site.Zone;

/** Says how hard a stack presses on what it stands on, and how hard it may. */
record LoadBelow(Optional<MarginWords> margin, String allowed) {
  /**
   * @param margins what an audit found for each stack
   */
  static LoadBelow of(Task task, StackView stack, List<Margin> margins) {
    Optional<Zone> zone = task.site().zone(stack.spot().zoneId());
    return new LoadBelow(
        zone.flatMap(z -> found(z, stack, margins)).map(m -> new MarginWords(m, task.figures())),
        zone.map(z -> task.figures().pressure(z.allowedKpa())).orElse("unknown"));
  }

  private static Optional<Margin> found(Zone zone, StackView stack, List<Margin> margins) {
    return margins.stream()
        .filter(m -> m.rule() == Placard.loadRule(zone) && m.where().equals(stack.spot().id()))
        .findFirst();
  }

  String planned() {
    return margin.map(MarginWords::value).orElse("not checked");
  }

  boolean tooMuch() {
    return margin.filter(MarginWords::broken).isPresent();
  }
}
