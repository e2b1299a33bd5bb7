package skidway.sheet;

/** Writes a place in an order as people say it: 1st, 2nd, 11th. */
final class Ordinals {
  private Ordinals() {}

  static String of(int place) {
    int tens = place / 10 % 10;
    String end =
        switch (tens == 1 ? 0 : place % 10) {
          case 1 -> "st";
          case 2 -> "nd";
          case 3 -> "rd";
          default -> "th";
        };
    return place + end;
  }
}
