package skidway.survey;

/** Ends the reading of one line. What is wrong was told where it was found. */
final class Misread extends RuntimeException {
  Misread() {
    super("told as a problem", null, false, false);
  }
}
