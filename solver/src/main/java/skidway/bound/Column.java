package skidway.bound;

/** A set of bundles on a spot. */
final class Column {
  final int spot;

  /** Growing. */
  final int[] set;

  /** At which something of it is there, a bit each. */
  final long moments;

  /** Of placing and stacking it. */
  final long costMs;

  /** What it costs at the prices of the bound. */
  final long valueMs;

  /** How much a plan that has it is above the bound at least. */
  final long excessMs;

  /**
   * @param gainMs the least that a set on this spot costs at the prices of the bound
   */
  Column(Ground ground, int spot, int[] set, long valueMs, long gainMs) {
    this.spot = spot;
    this.set = set.clone();
    this.valueMs = valueMs;
    this.excessMs = valueMs - gainMs;
    long there = 0;
    long sum = ground.stackMs(set, set.length, spot);
    for (int b : set) {
      there |= ground.there(b);
      sum += ground.placeMs(b, spot);
    }
    this.moments = there;
    this.costMs = sum;
  }

  private Column(Column same, long valueMs, long gainMs) {
    this.spot = same.spot;
    this.set = same.set;
    this.moments = same.moments;
    this.costMs = same.costMs;
    this.valueMs = valueMs;
    this.excessMs = valueMs - gainMs;
  }

  /**
   * The same set at other prices.
   *
   * @param gain the least that a set on this spot costs at them
   */
  Column priced(long value, long gain) {
    return new Column(this, value, gain);
  }

  /** A bundle's even share of the excess. */
  double shareMs() {
    return (double) excessMs / set.length;
  }

  boolean holds(int bundle) {
    for (int b : set) {
      if (b == bundle) {
        return true;
      }
    }
    return false;
  }
}
