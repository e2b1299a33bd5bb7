package skidway.sheet;

/**
 * What signs of stacks and piles have alike: the large code, the figures below it, the last words.
 */
record SignFrame(Markup page, RunningHead head) {
  /**
   * Opens a sign.
   *
   * @param rows tiers or layers that it lists
   */
  void open(String code, int rows) {
    page.open("article", "class", "stack-sign tiers-" + rows);
    String size = "font-size:" + Numbers.of(SignSizes.codeMm(code, rows)) + "mm";
    page.leaf("h3", code, "style", size);
  }

  void total(String what, String value) {
    page.open("p").leaf("strong", value).text(" ").leaf("span", what).close();
  }

  /** Closes the sign with what goes before it and whose it is. */
  void close() {
    page.leaf(
        "p",
        "Weights are the most to expect. The floor's designer, whoever answers for the ground, and"
            + " local codes go before this sign.");
    page.leaf("p", head.words(), "class", "of").close().line();
  }
}
