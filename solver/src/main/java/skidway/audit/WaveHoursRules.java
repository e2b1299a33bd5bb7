package skidway.audit;

import java.util.List;
import skidway.audit.walk.CarryWalks;
import skidway.plan.PieceHours;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.plan.Wave;
import skidway.plan.WavePlan;
import skidway.rules.Rule;

/**
 * Compares the crew time that waves state, each of them and all together, with what the audit
 * finds. Walks to where nobody gets are not compared; a plan with such says so itself.
 */
final class WaveHoursRules {
  private final WaveHours hours;
  private final Ledger ledger;
  private final ToldHours toldHours;
  private final double roundedS;
  private final boolean byHand;

  WaveHoursRules(Task task, Plan plan) {
    hours = new WaveHours(task, plan);
    byHand = task.site().byHand();
    ledger = new Ledger(task.figures());
    toldHours = new ToldHours(ledger, task.figures());
    roundedS = ToldHours.ROUNDED_S * task.delivery().pieces().size();
  }

  List<Finding> findings(WavePlan waves) {
    PieceHours all = hours.outside(waves.waves());
    for (Wave wave : waves.waves()) {
      PieceHours found = hours.of(wave);
      compare("wave " + wave.number(), "Wave " + wave.number() + " says", wave.hours(), found);
      all = all.plus(found);
    }
    compare("waves", "With all waves it says", waves.hours(), all);
    compare("waves", "Without waves it says", waves.straight(), hours.straight());
    return ledger.findings();
  }

  private void compare(String where, String says, PieceHours told, PieceHours found) {
    walk(Rule.CARRY, where, says, "carrying to piles", told.bringS(), found.bringS());
    walk(Rule.CARRY, where, says, "carrying to the walls", told.carryS(), found.carryS());
    exact(Rule.CARRY, where, says, "laying on piles and in racks", told.layS(), found.layS());
    exact(Rule.PICK_HEIGHT, where, says, "picking", told.pickS(), found.pickS());
    exact(Rule.REHANDLE, where, says, "moving pieces aside", told.asideS(), found.asideS());
    if (byHand) {
      walk(Rule.HAND_UNLOAD, where, says, "unloading by hand", told.machineS(), found.machineS());
    } else {
      exact(Rule.MACHINE_TIME, where, says, "machine work", told.machineS(), found.machineS());
    }
  }

  private void walk(
      Rule rule, String where, String says, String work, double toldS, double foundS) {
    if (Double.isFinite(foundS)) {
      double toleranceS = ToldHours.EXACT_S + roundedS + CarryWalks.ERROR_SHARE * foundS;
      toldHours.compare(rule, where, says, work, toldS, foundS, toleranceS);
    }
  }

  private void exact(
      Rule rule, String where, String says, String work, double toldS, double foundS) {
    toldHours.compare(rule, where, says, work, toldS, foundS, ToldHours.EXACT_S + roundedS);
  }
}
