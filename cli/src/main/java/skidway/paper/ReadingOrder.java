package skidway.paper;

import com.openhtmltopdf.bidi.BidiReorderer;
import com.openhtmltopdf.bidi.BidiSplitter;
import com.openhtmltopdf.bidi.BidiTextRun;
import java.text.Bidi;
import java.util.Arrays;

/**
 * Puts text of alphabets that run from right to left into the order it is drawn in, by the Unicode
 * Bidirectional Algorithm (UAX 9) as the Java library has it.
 */
final class ReadingOrder implements BidiSplitter {
  private static final String PAIRS = "()[]{}<>«»‹›";

  private Bidi paragraph = new Bidi("", Bidi.DIRECTION_LEFT_TO_RIGHT);
  private Integer[] visual = {};

  /** A line of text in the order it is drawn in, its letters joined. */
  static String leftToRight(String text) {
    char[] letters = text.toCharArray();
    if (!Bidi.requiresBidi(letters, 0, letters.length)) {
      return text;
    }
    ReadingOrder order = new ReadingOrder();
    order.setParagraph(text, NEUTRAL);
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < order.countTextRuns(); i++) {
      BidiTextRun run = order.getVisualRun(i);
      String part = text.substring(run.getStart(), run.getStart() + run.getLength());
      boolean turned = run.getDirection() == RTL;
      line.append(turned ? turned(ArabicForms.joined(part)) : part);
    }
    return line.toString();
  }

  private static String turned(String text) {
    StringBuilder turned = new StringBuilder(text).reverse();
    for (int i = 0; i < turned.length(); i++) {
      int pair = PAIRS.indexOf(turned.charAt(i));
      if (pair >= 0) {
        turned.setCharAt(i, PAIRS.charAt(pair ^ 1));
      }
    }
    return turned.toString();
  }

  @Override
  public void setParagraph(String text, byte direction) {
    int flags =
        direction == RTL
            ? Bidi.DIRECTION_RIGHT_TO_LEFT
            : direction == LTR
                ? Bidi.DIRECTION_LEFT_TO_RIGHT
                : Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT;
    paragraph = new Bidi(text, flags);
    int count = paragraph.getRunCount();
    byte[] levels = new byte[count];
    visual = new Integer[count];
    Arrays.setAll(visual, i -> i);
    for (int i = 0; i < count; i++) {
      levels[i] = (byte) paragraph.getRunLevel(i);
    }
    if (count > 1) {
      Bidi.reorderVisually(levels, 0, visual, 0, count);
    }
  }

  @Override
  public int countTextRuns() {
    return visual.length;
  }

  @Override
  public BidiTextRun getVisualRun(int index) {
    int run = visual[index];
    int start = paragraph.getRunStart(run);
    byte direction = paragraph.getRunLevel(run) % 2 == 1 ? RTL : LTR;
    return new BidiTextRun(start, paragraph.getRunLimit(run) - start, direction);
  }

  @Override
  public byte getBaseDirection(String text) {
    Bidi line = new Bidi(text, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
    return line.baseIsLeftToRight() ? LTR : RTL;
  }

  /** The same for text within a page. */
  static final class Turner implements BidiReorderer {
    @Override
    public String reorderRTLTextToLTR(String text) {
      return turned(text);
    }

    @Override
    public String shapeText(String text) {
      return ArabicForms.joined(text);
    }

    @Override
    public String deshapeText(String text) {
      return ArabicForms.single(text);
    }

    @Override
    public boolean isLiveImplementation() {
      return true;
    }
  }
}
