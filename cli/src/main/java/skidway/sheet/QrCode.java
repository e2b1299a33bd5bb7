package skidway.sheet;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** Draws a text as a QR code (ISO/IEC 18004), as one path of dark modules. */
final class QrCode {
  /** What the standard asks for around the code, in modules. */
  static final int QUIET_ZONE = 4;

  /**
   * A quarter of the code may be torn off or smeared. The next level, H, bears 30 % but needs more
   * and so smaller modules on the same tag, and in rain and from a step away blur fails first.
   */
  private static final ErrorCorrectionLevel LEVEL = ErrorCorrectionLevel.Q;

  private QrCode() {}

  static void write(Markup page, String text, String label) {
    ByteMatrix modules = modules(text);
    int edge = modules.getWidth() + 2 * QUIET_ZONE;
    page.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "viewBox",
        "0 0 " + edge + " " + edge,
        "shape-rendering",
        "crispEdges",
        "role",
        "img",
        "aria-label",
        label);
    page.empty(
        "rect", "width", Integer.toString(edge), "height", Integer.toString(edge), "fill", "#fff");
    page.empty("path", "d", path(modules), "fill", "#000").close();
  }

  static ByteMatrix modules(String text) {
    try {
      return Encoder.encode(text, LEVEL, hints(text)).getMatrix();
    } catch (WriterException e) {
      throw new IllegalArgumentException("No code holds this text: " + text, e);
    }
  }

  /** Plain letters need no mark of the alphabet, which old readers stumble over. */
  private static Map<EncodeHintType, ?> hints(String text) {
    boolean plain = StandardCharsets.US_ASCII.newEncoder().canEncode(text);
    return plain ? Map.of() : Map.of(EncodeHintType.CHARACTER_SET, "UTF-8");
  }

  /** Neighbouring dark modules of a row are one rectangle: no seams, less to write. */
  private static String path(ByteMatrix modules) {
    StringBuilder path = new StringBuilder();
    for (int y = 0; y < modules.getHeight(); y++) {
      int x = 0;
      while (x < modules.getWidth()) {
        int from = x;
        while (x < modules.getWidth() && modules.get(x, y) == 1) {
          x++;
        }
        if (x > from) {
          int wide = x - from;
          path.append('M').append(from + QUIET_ZONE).append(' ').append(y + QUIET_ZONE);
          path.append('h').append(wide).append("v1h-").append(wide).append('z');
        } else {
          x++;
        }
      }
    }
    return path.toString();
  }
}
