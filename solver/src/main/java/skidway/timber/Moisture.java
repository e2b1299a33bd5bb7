package skidway.timber;

/** Water over oven-dry wood by mass, percent; may be above 100 (FPL-GTR-282 ch. 4). */
public record Moisture(double lowPct, double likelyPct, double highPct) {
  /** A moisture that was measured. */
  public static Moisture of(double pct) {
    return new Moisture(pct, pct, pct);
  }
}
