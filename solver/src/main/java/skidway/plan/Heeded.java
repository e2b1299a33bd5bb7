package skidway.plan;

/**
 * How much of what happened a plan knows: the first so many recorded events of its job.
 *
 * @param events how many
 * @param check the check value at the end of the last of them, which stands for all up to it; empty
 *     where nobody noted it
 */
public record Heeded(int events, String check) {
  /** Of a plan for an empty site. */
  public static final Heeded NONE = new Heeded(0, "");
}
