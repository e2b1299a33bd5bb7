package skidway.sheet;

import java.util.List;

/** Warns, above everything else, of a plan that breaks rules. */
final class BrokenRules {
  private BrokenRules() {}

  static void write(Markup page, List<String> sentences) {
    if (sentences.isEmpty()) {
      return;
    }
    page.open("section", "id", "broken", "class", "broken", "role", "alert");
    page.leaf("h2", "Do not unload by this plan");
    page.leaf("p", "It breaks rules. Have it planned again, or settle each of these first:");
    page.open("ul");
    sentences.forEach(sentence -> page.leaf("li", sentence));
    page.close().close().line();
  }
}
