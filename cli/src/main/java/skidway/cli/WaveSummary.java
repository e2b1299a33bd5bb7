package skidway.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import skidway.plan.PieceHours;
import skidway.plan.Task;
import skidway.plan.TimberPile;
import skidway.plan.Wave;
import skidway.plan.WavePlan;
import skidway.plan.Way;
import skidway.units.Figures;

/** Writes down what waves amount to: hours with and without them, and what each brings where. */
final class WaveSummary {
  private static final double S_PER_MIN = 60;

  /** Hours of handling are known no better than to the hundredth part (assumption). */
  private static final double WORTH_A_WAVE = 0.01;

  private final Task task;
  private final WavePlan waves;
  private final Figures figures;

  WaveSummary(Task task, WavePlan waves) {
    this.task = task;
    this.waves = waves;
    this.figures = task.figures();
  }

  List<String> lines() {
    List<String> lines = new ArrayList<>();
    int brought = waves.waves().stream().mapToInt(wave -> wave.brought().size()).sum();
    lines.add(
        String.format(
            Locale.ROOT,
            "%s, revision %d: %d of %d pieces brought to piles, in %d waves",
            waves.jobName(),
            waves.revision(),
            brought,
            task.delivery().pieces().size(),
            waves.waves().size()));
    lines.add("");
    lines.addAll(hours().lines());
    lines.addAll(Wrap.sentence(saving(), 0, 2));
    waves.waves().forEach(wave -> lines.addAll(wave(wave)));
    return lines;
  }

  private TextTable hours() {
    TextTable table =
        new TextTable(
            "crew hours",
            ">bring",
            ">lay",
            ">carry",
            ">pick",
            ">aside",
            task.site().byHand() ? ">off truck" : ">machine",
            ">all");
    table.row(row("with waves", waves.hours()));
    table.row(row("all straight from bundles", waves.straight()));
    return table;
  }

  private String[] row(String name, PieceHours hours) {
    return new String[] {
      name,
      figures.hours(hours.bringS()),
      figures.hours(hours.layS()),
      figures.hours(hours.carryS()),
      figures.hours(hours.pickS()),
      figures.hours(hours.asideS()),
      figures.hours(hours.machineS()),
      figures.hours(hours.totalS())
    };
  }

  private String saving() {
    if (waves.waves().isEmpty()) {
      return "No wave saves time here: pull every piece straight from its bundle.";
    }
    double savedS = waves.straight().totalS() - waves.hours().totalS();
    double share = savedS / waves.straight().totalS();
    boolean seconds = savedS < 2 * S_PER_MIN;
    String saving =
        String.format(
            Locale.ROOT,
            "Waves save %.0f %s, %.1f %%.",
            seconds ? savedS : savedS / S_PER_MIN,
            seconds ? "s" : "min",
            100 * share);
    return share < WORTH_A_WAVE
        ? saving + " The times behind that are not known so nearly: wave or no wave is the crew's."
        : saving;
  }

  private List<String> wave(Wave wave) {
    List<String> lines = new ArrayList<>();
    lines.add("");
    String when =
        wave.laidBefore() == 0
            ? "before the first course"
            : "when course " + (wave.fromCourse() - 1) + " is laid";
    long carried = wave.brought().stream().filter(piece -> piece.way() == Way.BY_HAND).count();
    lines.add(
        String.format(
                Locale.ROOT,
                "Wave %d, %s, for courses %d to %d: %d pieces by hand",
                wave.number(),
                when,
                wave.fromCourse(),
                wave.toCourse(),
                carried)
            + byMachine(wave, carried));
    for (TimberPile pile : wave.piles()) {
      lines.addAll(
          Wrap.sentence(
              String.format(
                  Locale.ROOT,
                  "%s on %s, %s high, %s; top first: %s",
                  pile.id(),
                  pile.spot().zoneId(),
                  figures.length(pile.heightM()),
                  figures.mass(pile.massKg()),
                  topFirst(pile)),
              2,
              4));
    }
    return lines;
  }

  private String byMachine(Wave wave, long carried) {
    return task.site().byHand()
        ? ""
        : String.format(
            Locale.ROOT,
            ", %d by machine in %d trips",
            wave.brought().size() - carried,
            wave.trips().size());
  }

  private static String topFirst(TimberPile pile) {
    List<String> layers = new ArrayList<>();
    for (List<String> layer : pile.layers()) {
      layers.add(0, String.join(", ", layer));
    }
    return String.join(" / ", layers);
  }
}
