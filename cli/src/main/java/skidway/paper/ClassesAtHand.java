package skidway.paper;

import com.openhtmltopdf.simple.extend.XhtmlNamespaceHandler;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;

/**
 * What the page layer knows of HTML. It asks an element for its classes once for every rule of the
 * style sheet, hundreds of times in a row; looked up once, styles are found in two thirds of the
 * time. For one page and one thread.
 */
final class ClassesAtHand extends XhtmlNamespaceHandler {
  private @Nullable Element asked;
  private String classes = "";

  @Override
  @SuppressWarnings("ReferenceEquality") // The same element, not one that looks like it.
  public String getClass(Element element) {
    if (asked != element) {
      classes = super.getClass(element);
      asked = element;
    }
    return classes;
  }
}
