package skidway.plan;

import skidway.timber.BearerRow;

/**
 * One lift of the unloading sheet.
 *
 * @param number 1 is first
 * @param fromId load it is taken from, or waiting place when it is lifted on
 * @param toId spot or waiting place it is put down at
 * @param tier level it gets there, 1 = bottom; 0 in a rack
 * @param standId where the machine stands
 * @param reachM horizontal distance from the stand to the middle of the place; of the farther end
 *     when lifted on
 * @param massKg what it weighs at most, without rigging
 * @param capacityKg what the machine lifts of it at that reach
 * @param bearers laid beneath it before it comes down
 */
public record Step(
    int number,
    StepKind kind,
    String bundleId,
    String fromId,
    String toId,
    int tier,
    String standId,
    double reachM,
    double massKg,
    double capacityKg,
    BearerRow bearers) {}
