package skidway.sheet;

/**
 * A finished page and the two style sheets it is shown by: one for browsers, one for the PDF, whose
 * means are fewer.
 *
 * @param page with {@link #STYLE} where a style sheet belongs
 */
public record StyledPage(String page, String browserStyle, String pdfStyle) {
  static final String STYLE = "/* style sheet */";

  public String forBrowser() {
    return page.replace(STYLE, browserStyle);
  }

  public String forPdf() {
    return page.replace(STYLE, pdfStyle);
  }
}
