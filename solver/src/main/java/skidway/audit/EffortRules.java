package skidway.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import skidway.audit.walk.CarryWalks;
import skidway.erection.PullOrder;
import skidway.plan.Effort;
import skidway.rules.Rule;

/** Compares the crew time that a plan states with the crew time that the audit finds. */
final class EffortRules {
  private final Scene scene;
  private final ToldHours hours;
  private final Picking picking;
  private final HandUnloading hands;
  private final Effort found;
  private final int unreached;

  EffortRules(Scene scene, Ledger ledger) {
    this.scene = scene;
    hours = new ToldHours(ledger, scene.task().figures());
    PullOrder order = scene.task().pullOrder();
    CarryWalks walks = new CarryWalks(scene.task(), order);
    Handling handling = new Handling(scene, order);
    MovedAside aside = new MovedAside(scene, order);
    Carrying carrying = new Carrying(scene, walks, handling);
    unreached = carrying.unreached();
    picking = new Picking(scene);
    hands = new HandUnloading(scene, walks);
    found =
        new Effort(
            carrying.personS(),
            picking.personS(),
            aside.rehandleS(),
            OptionalDouble.of(aside.insideS()),
            handling.setDownS(),
            handling.machineS(),
            handling.moveS(),
            hands.personS());
  }

  Effort found() {
    return found;
  }

  List<String> check() {
    Effort told = scene.plan().effort();
    List<String> remarks = new ArrayList<>();
    pickHeight(told);
    if (told.insideS().isPresent()) {
      rehandle(told);
    } else {
      remarks.add(
          "Not checked: the hours of moving pieces aside; needs a plan that counts them inside"
              + " bundles too: plan anew.");
    }
    setDown(told);
    machineTime(told);
    moveTime(told);
    if (unreached > 0) {
      remarks.add(
          "Not checked: the hours of carrying; needs a way on foot to the places of "
              + unreached
              + " pieces.");
    } else {
      carry(told);
    }
    if (hands.unreached().isEmpty()) {
      handUnload(told);
    } else {
      remarks.add(
          "Not checked: the hours of unloading by hand; needs a way on foot from the truck for "
              + String.join(", ", hands.unreached())
              + ".");
    }
    return remarks;
  }

  private void handUnload(Effort told) {
    double toleranceS = ToldHours.EXACT_S + CarryWalks.ERROR_SHARE * hands.walkS();
    compare(Rule.HAND_UNLOAD, "unloading by hand", told.offTruckS(), found.offTruckS(), toleranceS);
  }

  private void carry(Effort told) {
    double toleranceS = ToldHours.EXACT_S + CarryWalks.ERROR_SHARE * found.carryS();
    compare(Rule.CARRY, "carrying", told.carryS(), found.carryS(), toleranceS);
  }

  private void pickHeight(Effort told) {
    double toleranceS = ToldHours.EXACT_S + ToldHours.ROUNDED_S * picking.picks().size();
    compare(Rule.PICK_HEIGHT, "picking", told.pickS(), found.pickS(), toleranceS);
  }

  private void rehandle(Effort told) {
    compare(
        Rule.REHANDLE,
        "moving pieces aside",
        told.rehandleS(),
        found.rehandleS(),
        ToldHours.EXACT_S);
    compare(
        Rule.REHANDLE,
        "moving pieces aside inside bundles",
        told.insideS().orElseThrow(),
        found.insideS().orElseThrow(),
        ToldHours.EXACT_S);
  }

  private void setDown(Effort told) {
    compare(Rule.SET_DOWN, "setting down", told.setDownS(), found.setDownS(), ToldHours.EXACT_S);
  }

  private void machineTime(Effort told) {
    compare(
        Rule.MACHINE_TIME, "machine work", told.machineS(), found.machineS(), ToldHours.EXACT_S);
  }

  private void moveTime(Effort told) {
    compare(
        Rule.MOVE_TIME, "moving what lay there", told.moveS(), found.moveS(), ToldHours.EXACT_S);
  }

  private void compare(Rule rule, String work, double toldS, double foundS, double toleranceS) {
    hours.compare(rule, "plan", "The plan says", work, toldS, foundS, toleranceS);
  }
}
