package skidway.plan;

/**
 * How a plan was searched for; the same inputs, seed and calculations give the same plan.
 *
 * @param calculations score calculations spent at most
 * @param stopped whether somebody stopped it early (then it is not repeatable)
 */
public record Search(long seed, long calculations, boolean stopped) {}
