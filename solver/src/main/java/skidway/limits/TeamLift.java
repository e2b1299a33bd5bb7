package skidway.limits;

/**
 * How many people carry a piece. A team lifts less than the sum of what its people can lift: two
 * thirds of it as two, half of it as three (UK Manual Handling Operations Regulations 1992,
 * guidance L23; more than four are unlikely to work). No figure here is a safe limit for a given
 * person.
 *
 * @param perPersonKg what one person lifts alone
 * @param teamOfTwo share of the sum that two lift together
 * @param teamOfThree share of the sum that three or more lift together
 * @param mostPeople largest team
 * @param onePersonLengthM a longer piece takes two people, whatever it weighs
 */
public record TeamLift(
    double perPersonKg,
    double teamOfTwo,
    double teamOfThree,
    int mostPeople,
    double onePersonLengthM) {
  /** Of one person's share: a piece of exactly a team's share is not too heavy by rounding. */
  private static final double ROUNDING = 1e-9;

  /** The smallest team for a piece; the largest, which then needs a device, if none is enough. */
  public int people(double massKg, double lengthM) {
    int people = lengthM > onePersonLengthM ? 2 : 1;
    while (people < mostPeople && capabilityKg(people) + ROUNDING * perPersonKg < massKg) {
      people++;
    }
    return people;
  }

  /** What so many people lift together, kg: never less than fewer people do. */
  public double capabilityKg(int people) {
    double kg = perPersonKg;
    for (int n = 2; n <= people; n++) {
      kg = Math.max(kg, n * perPersonKg * (n == 2 ? teamOfTwo : teamOfThree));
    }
    return kg;
  }

  /** What the largest team lifts, kg; anything heavier is for the machine or a lifting device. */
  public double mostKg() {
    return capabilityKg(mostPeople);
  }
}
