package skidway.audit;

import java.util.ArrayList;
import java.util.List;
import skidway.plan.Plan;
import skidway.plan.Task;

/**
 * Judges a plan against its job, rule by rule, from raw geometry and the plan's own statements. A
 * plan may be edited by hand and may be nonsense: that gives findings, never an exception.
 */
public final class Audit {
  private Audit() {}

  public static AuditReport of(Task task, Plan plan) {
    Scene scene = new Scene(task, plan);
    Ledger ledger = new Ledger(task.figures());
    List<String> remarks = new ArrayList<>();
    new KnownRules(scene, ledger).check();
    new SenseRules(scene, ledger).check();
    new ZoneRules(scene, ledger).check();
    new DeckEdgeRules(scene, ledger).check();
    new ClearRules(scene, ledger).check();
    remarks.addAll(new LineRules(scene, ledger).check());
    new SpacingRules(scene, ledger).check();
    new StackRules(scene, ledger).check();
    new LoadRules(scene, ledger).check();
    JoistRules joists = new JoistRules(scene, ledger);
    joists.check();
    remarks.addAll(joists.remarks());
    new BearerRules(scene, ledger).check();
    new GroundRules(scene, ledger).check();
    remarks.addAll(Unmeasured.remarks(scene));
    new RackRules(scene, ledger).check();
    new MachineRules(scene, ledger).check();
    new GripRules(scene, ledger).check();
    new LineLiftRules(scene, ledger).check();
    remarks.addAll(MachineRemarks.of(task.site().machine(), !task.site().lanes().isEmpty()));
    remarks.addAll(new PathRules(scene, ledger).check());
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
}
