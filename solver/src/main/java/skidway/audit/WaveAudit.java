package skidway.audit;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import skidway.audit.walk.PathFlood;
import skidway.audit.walk.ShutPath;
import skidway.plan.Margin;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.plan.TimberPile;
import skidway.plan.Wave;
import skidway.plan.WavePlan;
import skidway.rules.Rule;
import skidway.rules.Setting;

/**
 * Judges the waves of a plan from raw geometry and their own statements: at each refill point, when
 * all piles are full, every rule that stacks keep; for every piece that it is in one place at any
 * time; and the hours.
 */
public final class WaveAudit {
  private final Task task;
  private final Plan plan;
  private final PathFlood flood;
  private final WaveMoment moments;

  public WaveAudit(Task task, Plan plan) {
    this.task = task;
    this.plan = plan;
    flood = new PathFlood(task);
    moments = new WaveMoment(task, plan);
  }

  /** Everything that waves break: what they say of pieces and hours, and each wave's moment. */
  public List<Finding> findings(WavePlan waves) {
    List<Finding> all = new ArrayList<>(new WavePieces(task, plan).findings(waves));
    waves.waves().forEach(wave -> all.addAll(findings(wave)));
    all.addAll(new WaveHoursRules(task, plan).findings(waves));
    return all;
  }

  /**
   * The audit of a plan and of its waves as one: their findings after the plan's own, the tightest
   * margins of both, and the piles' margins after those of the stacks.
   *
   * @param alone of the plan without waves
   */
  public AuditReport with(AuditReport alone, WavePlan waves) {
    List<Finding> findings = new ArrayList<>(new WavePieces(task, plan).findings(waves));
    Map<Rule, Margin> tightest = new EnumMap<>(Rule.class);
    alone.margins().forEach(margin -> tightest.put(margin.rule(), margin));
    List<Margin> placed = new ArrayList<>(alone.stackMargins());
    for (Wave wave : waves.waves()) {
      Scene scene = moments.scene(wave, true);
      Ledger stacksAlone = judged(moments.scene(wave, false));
      Ledger full = judged(scene);
      findings.addAll(more(full.findings(), stacksAlone.findings()));
      List<Margin> margins = more(full.marginsByPlace(), stacksAlone.marginsByPlace());
      margins.forEach(margin -> tightest.merge(margin.rule(), margin, Ledger::tighter));
      List<String> ids = wave.piles().stream().map(TimberPile::id).toList();
      StackMargins.of(scene, margins).stream()
          .filter(margin -> ids.contains(margin.where()))
          .forEach(placed::add);
    }
    findings.addAll(new WaveHoursRules(task, plan).findings(waves));
    return alone.with(findings, List.copyOf(tightest.values()), placed);
  }

  /** What the piles of a wave break that the stacks alone do not. */
  public List<Finding> findings(Wave wave) {
    return more(
        judged(moments.scene(wave, true)).findings(),
        judged(moments.scene(wave, false)).findings());
  }

  private static <T> List<T> more(List<T> with, List<T> without) {
    Set<T> known = new HashSet<>(without);
    return with.stream().filter(one -> !known.contains(one)).toList();
  }

  /** Ids of the piles that a wave's findings are about; of all piles where none is named. */
  public List<String> faulty(Wave wave) {
    Set<String> ids = new LinkedHashSet<>();
    List<String> all = wave.piles().stream().map(TimberPile::id).toList();
    for (Finding finding : findings(wave)) {
      List<String> named = all.stream().filter(id -> names(finding, id)).toList();
      ids.addAll(named.isEmpty() ? all : named);
    }
    return List.copyOf(ids);
  }

  private static boolean names(Finding finding, String id) {
    Pattern word = Pattern.compile("(?<![\\w.])" + Pattern.quote(id) + "(?![\\w]|\\.\\d)");
    return word.matcher(finding.where()).find() || word.matcher(finding.sentence()).find();
  }

  /** Ways on foot, with all walls as high as they will be. */
  private void paths(Scene scene, Ledger ledger) {
    for (ShutPath path : flood.shut(scene.stackSpots())) {
      ledger.broken(
          Rule.PATHS_OPEN,
          path.id(),
          0,
          task.settings().get(Setting.WALK_WIDTH),
          "No way leads to "
              + path.name()
              + ": "
              + String.join(", ", path.spotIds())
              + " shut it.");
    }
  }

  private Ledger judged(Scene scene) {
    Ledger ledger = new Ledger(task.figures());
    new ZoneRules(scene, ledger).check();
    new ClearRules(scene, ledger).check();
    new LineRules(scene, ledger).check();
    new DeckEdgeRules(scene, ledger).check();
    new SpacingRules(scene, ledger).check();
    new StackRules(scene, ledger).check();
    new LoadRules(scene, ledger).check();
    new JoistRules(scene, ledger).check();
    new GroundRules(scene, ledger).check();
    new RackRules(scene, ledger).check();
    paths(scene, ledger);
    return ledger;
  }
}
