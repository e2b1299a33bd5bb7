package skidway.job;

/** Checks the number that says which form a file has, so that a later form is not misread. */
final class Format {
  static final int CURRENT = 1;

  private Format() {}

  static void check(Fields f) {
    String allowed = "this version of Skidway reads \"format\": " + CURRENT;
    f.node("format", allowed)
        .filter(n -> !(n instanceof LocatedNode.Figure number) || number.value() != CURRENT)
        .ifPresent(
            n ->
                f.report(
                    n.place(),
                    n.words() + " as \"format\"",
                    allowed,
                    "write " + CURRENT + ", or use the version that wrote the file"));
  }
}
