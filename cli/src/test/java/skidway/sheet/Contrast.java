package skidway.sheet;

/**
 * How far two colours stand out from each other, by Web Content Accessibility Guidelines (WCAG) 2.2
 * of the W3C: "contrast ratio" and "relative luminance" in its glossary, limits in success criteria
 * 1.4.3 (text) and 1.4.11 (graphical objects).
 */
final class Contrast {
  /** Success criterion 1.4.3: text. */
  static final double TEXT = 4.5;

  /** Success criterion 1.4.3: large text; 1.4.11: what is needed to understand a drawing. */
  static final double LARGE_TEXT_OR_SIGN = 3;

  private static final double MM_PER_POINT = 25.4 / 72;

  private Contrast() {}

  /** From 1 (the same) to 21 (black on white). */
  static double ratio(String one, String other) {
    double a = luminance(one) + 0.05;
    double b = luminance(other) + 0.05;
    return Math.max(a, b) / Math.min(a, b);
  }

  /** The least contrast of text: large means 18 point, or 14 point if bold. */
  static double leastForText(double sizeMm, boolean bold) {
    return sizeMm / MM_PER_POINT >= (bold ? 14 : 18) ? LARGE_TEXT_OR_SIGN : TEXT;
  }

  /** From 0 (black) to 1 (white): what is left of a colour on a grey print. */
  static double luminance(String hex) {
    int rgb = Integer.parseInt(full(hex).substring(1), 16);
    return 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8) + 0.0722 * linear(rgb);
  }

  private static double linear(int channel) {
    double c = (channel & 0xff) / 255.0;
    return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }

  /** The six digits of a colour that may be written with three. */
  static String full(String hex) {
    return hex.length() == 4 ? hex.replaceAll("([0-9a-fA-F])", "$1$1") : hex;
  }
}
