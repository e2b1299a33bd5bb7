package skidway.paper;

import java.awt.Color;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;

/** How an element of a drawing looks: what is written on it, else on what it lies in. */
record SvgLook(Map<String, String> told) {
  static final SvgLook PLAIN = new SvgLook(Map.of());

  private static final Set<String> LOOKS =
      Set.of(
          "fill",
          "fill-opacity",
          "fill-rule",
          "stroke",
          "stroke-opacity",
          "stroke-width",
          "stroke-dasharray",
          "stroke-dashoffset",
          "stroke-linecap",
          "stroke-linejoin",
          "paint-order",
          "font-size",
          "font-weight",
          "text-anchor");

  /** Where things lie, which their own painter reads. */
  private static final Set<String> PLACES =
      Set.of(
          "x",
          "y",
          "x1",
          "y1",
          "x2",
          "y2",
          "cx",
          "cy",
          "r",
          "rx",
          "ry",
          "width",
          "height",
          "d",
          "points",
          "transform",
          "viewBox",
          "overflow");

  /** What changes nothing on paper; one font and smooth edges are all there is. */
  private static final Set<String> SILENT =
      Set.of(
          "xmlns", "alt", "class", "id", "role", "style", "font-family", "shape-rendering", "dir");

  /**
   * The look of an element within one of this look.
   *
   * @throws IllegalArgumentException if something is written on it that would be lost on paper
   */
  SvgLook with(Element element) {
    Map<String, String> all = new HashMap<>(told);
    NamedNodeMap own = element.getAttributes();
    for (int i = 0; i < own.getLength(); i++) {
      Attr attribute = (Attr) own.item(i);
      String name = attribute.getName();
      if (LOOKS.contains(name)) {
        all.put(name, attribute.getValue());
      } else if (!PLACES.contains(name)
          && !SILENT.contains(name)
          && !name.startsWith("data-")
          && !name.startsWith("aria-")) {
        throw new IllegalArgumentException(
            "Drawings on paper have no attribute " + name + "=\"" + attribute.getValue() + "\".");
      }
    }
    return new SvgLook(all);
  }

  String word(String name, String usual) {
    return told.getOrDefault(name, usual);
  }

  double number(String name, double usual) {
    String value = told.get(name);
    return value == null ? usual : Double.parseDouble(value);
  }

  boolean paints(String what, String usual) {
    return !word(what, usual).equals("none");
  }

  Color colour(String what) {
    String colour = word(what, "#000000");
    int digits = colour.length() - 1;
    if ((digits != 3 && digits != 6) || colour.charAt(0) != '#') {
      throw noColour(colour);
    }
    int rgb = 0;
    for (int i = 1; i <= digits; i++) {
      int digit = Character.digit(colour.charAt(i), 16);
      if (digit < 0) {
        throw noColour(colour);
      }
      // Of three digits each stands for two.
      rgb = digits == 3 ? rgb << 8 | digit * 0x11 : rgb << 4 | digit;
    }
    return new Color(rgb);
  }

  private static IllegalArgumentException noColour(String found) {
    return new IllegalArgumentException("Colours are #rgb or #rrggbb, found " + found + ".");
  }

  /** The lengths of dashes and gaps; none for a whole line. */
  float[] dashes() {
    String value = word("stroke-dasharray", "none").trim();
    if (value.equals("none")) {
      return new float[0];
    }
    String[] parts = value.split("[\\s,]+", -1);
    float[] dashes = new float[parts.length];
    for (int i = 0; i < parts.length; i++) {
      dashes[i] = Float.parseFloat(parts[i]);
    }
    return dashes;
  }

  /** Where in the first dash a line starts; PDF asks for a figure that is not negative. */
  float dashStart() {
    double period = 0;
    for (float dash : dashes()) {
      period += dash;
    }
    double start = number("stroke-dashoffset", 0);
    return period > 0 ? (float) (start - period * Math.floor(start / period)) : 0;
  }
}
