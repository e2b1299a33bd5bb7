package skidway.plan;

/** What a crew would do without a plan, on the same job: how much it places and what that costs. */
public record Baseline(String name, String sentence, int placed, Effort effort) {}
