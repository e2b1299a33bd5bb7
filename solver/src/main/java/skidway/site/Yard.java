package skidway.site;

/** A piece of ground that stacks may stand on. */
public record Yard(String id, Outline outline, double allowedKpa) implements Zone {
  @Override
  public double heightM() {
    return 0;
  }
}
