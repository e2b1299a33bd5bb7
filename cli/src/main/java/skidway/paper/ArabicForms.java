package skidway.paper;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.Map;

/**
 * Joins the letters of Arabic and its kin by the forms that Unicode has for the beginning, middle
 * and end of a word (blocks Arabic Presentation Forms A and B). Which form is which is read from
 * the characters' own names.
 */
final class ArabicForms {
  private static final String[] PLACES = {"ISOLATED", "FINAL", "INITIAL", "MEDIAL"};
  private static final int LAM = 0x644;

  private ArabicForms() {}

  /** Loaded at the first Arabic letter; most pages have none. */
  private static final class Table {
    static final Map<String, int[]> FORMS = new HashMap<>();

    static {
      for (int c = 0xFB50; c <= 0xFEFC; c++) {
        String name = Character.getName(c);
        for (int place = 0; name != null && place < PLACES.length; place++) {
          if (name.endsWith(PLACES[place] + " FORM")) {
            FORMS.computeIfAbsent(single(Character.toString(c)), k -> new int[4])[place] = c;
          }
        }
      }
    }
  }

  /** Text in reading order with each letter in the form its neighbours ask for. */
  static String joined(String text) {
    int[] letters = text.codePoints().toArray();
    StringBuilder joined = new StringBuilder();
    for (int i = 0; i < letters.length; i++) {
      boolean before = i > 0 && joinsOn(neighbour(letters, i, -1)) && joinsBack(letters[i]);
      if (letters[i] == LAM && i + 1 < letters.length) {
        int[] pair = forms(new String(letters, i, 2));
        if (pair[0] > 0) {
          joined.appendCodePoint(pair[before && pair[1] > 0 ? 1 : 0]);
          i++;
          continue;
        }
      }
      boolean after = joinsOn(letters[i]) && joinsBack(neighbour(letters, i, 1));
      int form = forms(Character.toString(letters[i]))[(before ? 1 : 0) + (after ? 2 : 0)];
      joined.appendCodePoint(form > 0 ? form : letters[i]);
    }
    return joined.toString();
  }

  /** The letters without the form their place in a word gave them. */
  static String single(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFKC);
  }

  /** The next letter that way; marks above and below letters do not part them. */
  private static int neighbour(int[] letters, int from, int way) {
    int i = from + way;
    while (i >= 0
        && i < letters.length
        && Character.getType(letters[i]) == Character.NON_SPACING_MARK) {
      i += way;
    }
    return i >= 0 && i < letters.length ? letters[i] : ' ';
  }

  private static boolean joinsOn(int letter) {
    return forms(Character.toString(letter))[2] > 0;
  }

  private static boolean joinsBack(int letter) {
    return forms(Character.toString(letter))[1] > 0;
  }

  private static int[] forms(String letters) {
    boolean arabic = letters.codePointAt(0) >= 0x600 && letters.codePointAt(0) < 0x780;
    int[] none = new int[4];
    return arabic ? Table.FORMS.getOrDefault(letters, none) : none;
  }
}
