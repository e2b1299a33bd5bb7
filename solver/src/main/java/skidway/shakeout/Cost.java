package skidway.shakeout;

import skidway.plan.PieceHours;

/** Crew time piece by piece in person-milliseconds: whole numbers, whose sums know no order. */
record Cost(long bringMs, long layMs, long carryMs, long pickMs, long asideMs, long machineMs) {
  static final Cost NONE = new Cost(0, 0, 0, 0, 0, 0);

  long totalMs() {
    return bringMs + layMs + carryMs + pickMs + asideMs + machineMs;
  }

  Cost plus(Cost other) {
    return new Cost(
        bringMs + other.bringMs,
        layMs + other.layMs,
        carryMs + other.carryMs,
        pickMs + other.pickMs,
        asideMs + other.asideMs,
        machineMs + other.machineMs);
  }

  PieceHours hours() {
    return new PieceHours(
        bringMs / 1000.0,
        layMs / 1000.0,
        carryMs / 1000.0,
        pickMs / 1000.0,
        asideMs / 1000.0,
        machineMs / 1000.0);
  }
}
