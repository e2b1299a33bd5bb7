package skidway.sheet;

/** Shortens fingerprints to what people compare by eye. */
final class Fingerprints {
  private static final int SHOWN = 10;

  private Fingerprints() {}

  static String brief(String fingerprint) {
    int length = Math.min(SHOWN, fingerprint.length());
    return fingerprint.isEmpty() ? "not saved" : fingerprint.substring(0, length);
  }
}
