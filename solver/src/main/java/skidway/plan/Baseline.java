package skidway.plan;

/** What a crew would do without a plan, on the same job: how much it places and what that costs. */
public record Baseline(String name, String sentence, int placed, Effort effort) {
  /** The name of what comes of changing nothing when the rest is planned anew. */
  public static final String AS_BEFORE = "as before";
}
