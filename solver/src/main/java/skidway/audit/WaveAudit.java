package skidway.audit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.plan.TimberPile;
import skidway.plan.Wave;

/**
 * Judges the waves of a plan from raw geometry and their own statements: at each refill point, when
 * all piles are full, every rule that stacks keep.
 */
public final class WaveAudit {
  private final Task task;
  private final WaveMoment moments;

  public WaveAudit(Task task, Plan plan) {
    this.task = task;
    moments = new WaveMoment(task, plan);
  }

  /** What the piles of a wave break that the stacks alone do not. */
  public List<Finding> findings(Wave wave) {
    Set<Finding> before = new HashSet<>(judged(moments.scene(wave, false)));
    return judged(moments.scene(wave, true)).stream().filter(f -> !before.contains(f)).toList();
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

  private List<Finding> judged(Scene scene) {
    Ledger ledger = new Ledger(task.figures());
    new KnownRules(scene, ledger).check();
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
    new PathRules(scene, ledger).check();
    return new ArrayList<>(ledger.findings());
  }
}
