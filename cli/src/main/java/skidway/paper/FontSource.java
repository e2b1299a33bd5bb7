package skidway.paper;

import org.apache.fontbox.ttf.TrueTypeFont;

/** Where a font is read from; read anew for every document, which closes it. */
@FunctionalInterface
interface FontSource {
  TrueTypeFont read();
}
