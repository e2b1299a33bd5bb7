package skidway.audit;

import java.util.Comparator;
import java.util.regex.Pattern;

/** Orders codes as people count: D2 before D10, step 9 before step 10. */
final class PlaceOrder implements Comparator<String> {
  private static final Pattern BETWEEN_WORD_AND_NUMBER =
      Pattern.compile("(?<=\\d)(?=\\D)|(?<=\\D)(?=\\d)");

  @Override
  public int compare(String a, String b) {
    String[] as = BETWEEN_WORD_AND_NUMBER.split(a, -1);
    String[] bs = BETWEEN_WORD_AND_NUMBER.split(b, -1);
    for (int i = 0; i < Math.min(as.length, bs.length); i++) {
      int order = comparePart(as[i], bs[i]);
      if (order != 0) {
        return order;
      }
    }
    int order = Integer.compare(as.length, bs.length);
    return order != 0 ? order : a.compareTo(b);
  }

  private static int comparePart(String a, String b) {
    if (!isNumber(a) || !isNumber(b)) {
      return a.compareTo(b);
    }
    String x = a.replaceFirst("^0+", "");
    String y = b.replaceFirst("^0+", "");
    return x.length() != y.length() ? Integer.compare(x.length(), y.length()) : x.compareTo(y);
  }

  private static boolean isNumber(String part) {
    return !part.isEmpty() && Character.isDigit(part.charAt(0));
  }
}
