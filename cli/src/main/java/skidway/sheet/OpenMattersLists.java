package skidway.sheet;

import java.util.List;

/**
 * Writes the two lists of what a plan leaves to people, each with a box to tick when it is done.
 */
final class OpenMattersLists {
  private OpenMattersLists() {}

  static void write(Markup page, OpenMatters matters) {
    list(
        page,
        "settle",
        "For people to settle",
        "No plan can decide these. Tick each when it is settled, before the lift it is about.",
        "Nothing was found.",
        matters.toSettle());
    list(
        page,
        "unchecked",
        "Not checked",
        "Nobody wrote down what these checks need. Until somebody does, a person must look.",
        "Everything that Skidway checks was checked.",
        matters.notChecked());
  }

  private static void list(
      Markup page, String id, String title, String lead, String none, List<String> sentences) {
    page.open("section", "id", id).leaf("h2", title);
    page.leaf("p", sentences.isEmpty() ? none : lead);
    if (!sentences.isEmpty()) {
      page.open("ul", "class", "ticks");
      for (String sentence : sentences) {
        page.open("li").leaf("span", "", "class", "box").leaf("span", sentence).close();
      }
      page.close();
    }
    page.close().line();
  }
}
