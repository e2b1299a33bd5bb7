package skidway.cli;

/** Says what is wrong with what was asked for, and what to ask for instead. */
final class BadUsage extends RuntimeException {
  BadUsage(String message) {
    super(message);
  }
}
