package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;

class MarkupTest {
  @Property(seed = "20310505", tries = 300)
  void anyTextStaysWellFormed(@ForAll String text) throws Exception {
    String xml = new Markup().open("g", "a", text).text(text).close().done();
    Document read = SvgText.parse(xml);
    assertThat(read.getDocumentElement().getChildNodes().getLength()).isLessThanOrEqualTo(1);
  }

  @Test
  void markupSignsAreReadBackAsWritten() throws Exception {
    String spiteful = "<script>&\"'</script>";
    String xml = new Markup().open("g", "a", spiteful).text(spiteful).close().done();
    assertThat(SvgText.parse(xml).getDocumentElement().getAttribute("a")).isEqualTo(spiteful);
    assertThat(SvgText.parse(xml).getDocumentElement().getTextContent()).isEqualTo(spiteful);
  }

  @Test
  void whatIsOpenMustBeClosed() {
    assertThatIllegalStateException().isThrownBy(() -> new Markup().open("g").done());
  }

  @Test
  void numbersAreShortAndPlain() {
    assertThat(Numbers.of(0)).isEqualTo("0");
    assertThat(Numbers.of(-0.001)).isEqualTo("0");
    assertThat(Numbers.of(-1.5)).isEqualTo("-1.5");
    assertThat(Numbers.of(12.05)).isEqualTo("12.05");
    assertThat(Numbers.of(1234567.899)).isEqualTo("1234567.9");
    assertThatIllegalArgumentException().isThrownBy(() -> Numbers.of(Double.NaN));
  }
}
