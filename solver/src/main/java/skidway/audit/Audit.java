package skidway.audit;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.ToIntFunction;
import skidway.erection.Timetable;
import skidway.plan.Plan;
import skidway.plan.Task;

/**
 * Judges a plan against its job, rule by rule, from raw geometry and the plan's own statements. A
 * plan may be edited by hand and may be nonsense: that gives findings, never an exception.
 */
public final class Audit {
  private Audit() {}

  /**
   * The audit of a plan by the schedule that the job states; where it states none, all loads are
   * there before anything is pulled.
   */
  public static AuditReport of(Task task, Plan plan) {
    if (!task.schedule().stated()) {
      return of(task, plan, arrival -> 0);
    }
    return of(task, plan, Timetable.of(task.schedule(), task.pullOrder())::laidBy);
  }

  /**
   * The audit of a plan whose loads come while people pull.
   *
   * @param pulledBy how many pieces are pulled by the time a load comes, if they can be; never less
   *     for a later time
   */
  public static AuditReport of(Task task, Plan plan, ToIntFunction<LocalDateTime> pulledBy) {
    Scene scene = new Scene(task, plan, new OnSite(task, pulledBy));
    Ledger ledger = new Ledger(task.figures());
    List<String> remarks = new ArrayList<>();
    new KnownRules(scene, ledger).check();
    new SenseRules(scene, ledger).check();
    new ZoneRules(scene, ledger).check();
    new ClearRules(scene, ledger).check();
    remarks.addAll(new LineRules(scene, ledger).check());
    List<Scene> moments = scene.moments();
    remarks.addAll(atEach(moments, ledger, Audit::standing));
    remarks.addAll(Unmeasured.remarks(scene));
    new MachineRules(scene, ledger).check();
    new BearerRules(scene, ledger).check();
    new GripRules(scene, ledger).check();
    new LineLiftRules(scene, ledger).check();
    remarks.addAll(MachineRemarks.of(task.site().machine(), !task.site().lanes().isEmpty()));
    remarks.addAll(atEach(moments, ledger, (then, told) -> new PathRules(then, told).check()));
    new OrderRules(scene, ledger).check();
    new ReplayRules(scene, ledger).check();
    EffortRules effort = new EffortRules(scene, ledger);
    remarks.addAll(effort.check());
    PeopleRules people = new PeopleRules(scene);
    people.check();
    return new AuditReport(
        ledger.findings(),
        ledger.margins(),
        remarks,
        effort.found(),
        StackMargins.of(scene, ledger.marginsByPlace()),
        people.margins(),
        people.notes());
  }

  /** Checks what is there together, moment after moment; a remark is made once. */
  private static List<String> atEach(
      List<Scene> moments, Ledger ledger, BiFunction<Scene, Ledger, List<String>> check) {
    Set<String> remarks = new LinkedHashSet<>();
    for (Scene then : moments) {
      ledger.during(then.when());
      remarks.addAll(check.apply(then, ledger));
    }
    ledger.during("");
    return List.copyOf(remarks);
  }

  /** How things stand at one moment. */
  private static List<String> standing(Scene then, Ledger ledger) {
    new DeckEdgeRules(then, ledger).check();
    new SpacingRules(then, ledger).check();
    new StackRules(then, ledger).check();
    new LoadRules(then, ledger).check();
    JoistRules joists = new JoistRules(then, ledger);
    joists.check();
    new GroundRules(then, ledger).check();
    new RackRules(then, ledger).check();
    return joists.remarks();
  }
}
