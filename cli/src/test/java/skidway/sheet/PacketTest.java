package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import skidway.plan.Step;
import skidway.plan.StepKind;

class PacketTest {
  private static final String PAGE =
      Packet.html(SampleHouse.task(), SampleHouse.plan(), "a1b2c3d4e5f60718", SampleAudit.report());

  private static Document parse(String page) throws Exception {
    return SvgText.parse(page.substring(page.indexOf("<html")));
  }

  @Test
  void stepsStandInOrderWithAllTheyNeed() throws Exception {
    List<Element> rows =
        SvgText.elements(parse(PAGE), "tr").stream()
            .filter(e -> List.of("place", "set-down", "lift-on").contains(e.getAttribute("class")))
            .toList();
    List<Step> steps = SampleHouse.plan().steps();
    assertThat(rows).hasSameSizeAs(steps);
    for (int i = 0; i < steps.size(); i++) {
      assertThat(rows.get(i).getTextContent())
          .startsWith(Integer.toString(steps.get(i).number()))
          .contains(steps.get(i).bundleId(), steps.get(i).toId(), "at " + steps.get(i).standId());
    }
  }

  @Test
  void setDownAndLiftOnStandOut() {
    Step down =
        SampleHouse.plan().steps().stream()
            .filter(s -> s.kind() == StepKind.SET_DOWN)
            .findFirst()
            .orElseThrow();
    assertThat(down.bundleId()).isEqualTo("B13");
    assertThat(PAGE)
        .contains("<tr class=\"set-down\"", "Set down for now at S1.")
        .contains("<tr class=\"lift-on\"", "Lift from S1 onto A5 as tier 2.");
  }

  @Test
  void everyTableHeadSaysItsScope() throws Exception {
    for (Element head : SvgText.elements(parse(PAGE), "th")) {
      assertThat(head.getAttribute("scope")).isIn("col", "row", "rowgroup");
    }
  }

  @Test
  void bearersAreToldShortly() {
    assertThat(PAGE)
        .contains("<span>5, 3&#39;-6&quot; apart,</span> <span>3&#39;-0&quot; long,</span>")
        .contains("<span>first 1&#39;-0&quot; in</span>")
        .contains("<span>on the rack&#39;s rails</span>");
  }

  @Test
  void theLiftThatRisesAboveTheWedgeHeightSaysSoOnce() throws Exception {
    List<Element> rows = SvgText.elements(parse(PAGE), "tr");
    // A3 is 5'-7" high with four tiers: two are 2'-9 1/2", three 4'-2 1/2".
    List<String> warned =
        rows.stream()
            .map(Element::getTextContent)
            .filter(t -> t.contains("Above 3'-11\": cross supports or wedges first."))
            .toList();
    assertThat(warned).hasSize(3).anyMatch(t -> t.contains("Put on A3 as tier 3."));
    assertThat(warned).noneMatch(t -> t.contains("tier 2") || t.contains("tier 4"));
  }

  @Test
  void massesAreSaidToBeTheMostOnceInTheHead() {
    assertThat(PAGE).contains(">Weighs at most</th>");
  }

  @Test
  void whoComparedTheChartIsNamed() {
    assertThat(PAGE).contains("confirmed by <strong>R. Okafor &amp; crew</strong> on ");
    String nobody = Packet.html(UglySite.task(1), UglySite.plan(1), "", SampleAudit.nothing());
    assertThat(nobody).contains("confirmed by <span class=\"blank\"></span> on ");
  }

  @Test
  void whatIsLeftToPeopleIsListed() {
    assertThat(PAGE)
        .contains("<h2>For people to settle</h2>", "teamLift: 3 pieces 6x8")
        .contains("The back door can be reached over the deck only.")
        .contains("<h2>Not checked</h2>", ">slope of yard west; needs slope.<");
  }

  @Test
  void stacksTellWhatTheAuditFoundBelowThem() throws Exception {
    String row =
        SvgText.elements(parse(PAGE), "tr").stream()
            .filter(e -> e.getAttribute("class").equals("stack"))
            .map(Element::getTextContent)
            .filter(t -> t.startsWith("D1"))
            .findFirst()
            .orElseThrow();
    assertThat(row).contains("30 psf / 100 psf");
    assertThat(Packet.html(UglySite.task(1), UglySite.plan(1), "", SampleAudit.nothing()))
        .contains("not checked / 50.0 kPa");
  }

  @Test
  void whatIsRecalledIsToldToBeConfirmed() {
    assertThat(PAGE)
        .contains("heightToWidth", "slingAngle")
        .contains("<strong class=\"flag\">from memory, confirm</strong>");
  }

  @Test
  void bundleWithoutASpotIsToldWithItsRule() {
    assertThat(PAGE)
        .contains("Without a spot", "the stack would be 5&#39;-7&quot; high", "stackHeight");
  }

  @Test
  void changedSettingsAreToldWithTheirReason() {
    assertThat(PAGE)
        .contains("guard barricade along the edge, decided by the site lead")
        .contains("29 CFR 1926.250(b)(1)");
  }

  @Test
  void spitefulNamesStayText() throws Exception {
    String page =
        Packet.html(
            UglySite.task(3),
            UglySite.plan(3),
            "<f>",
            SampleAudit.broken("<script>alert(1)</script>"));
    assertThat(page).doesNotContain("<script", "<b>W</b>", "\u0001");
    assertThat(page).contains("&lt;script&gt;alert(&#39;x&#39;)&lt;/script&gt; &amp; &quot;Söhne");
    assertThat(SvgText.elements(parse(page), "script")).isEmpty();
  }

  @Test
  void nothingIsFetched() throws Exception {
    Matcher addresses = Pattern.compile("(?:https?:)?//[\\w.-]+").matcher(PAGE);
    List<String> found = addresses.results().map(r -> r.group()).distinct().toList();
    assertThat(found).isSubsetOf("http://www.w3.org");
    assertThat(PAGE).doesNotContain("@import", "url(", "src=", "<link");
    for (Element way : SvgText.elements(parse(PAGE), "a")) {
      assertThat(PAGE).contains("id=\"" + way.getAttribute("href").substring(1) + "\"");
    }
  }

  @Test
  void samePageOnEveryMachine() {
    Locale before = Locale.getDefault();
    try {
      for (String tag : List.of("tr-TR", "de-DE", "ar-EG")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(
                Packet.html(
                    SampleHouse.task(),
                    SampleHouse.plan(),
                    "a1b2c3d4e5f60718",
                    SampleAudit.report()))
            .as(tag)
            .isEqualTo(PAGE);
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void oneBundleIsEnough() throws Exception {
    String page = Packet.html(UglySite.task(1), UglySite.plan(1), "", SampleAudit.nothing());
    assertThat(parse(page).getDocumentElement().getTagName()).isEqualTo("html");
    assertThat(page).contains("not saved");
  }

  @Test
  void somePartsAloneKeepTheCautionsAndLeaveOutTheRest() throws Exception {
    String page =
        Packet.html(
            SampleHouse.task(),
            SampleHouse.plan(),
            "a1b2c3d4e5f60718",
            SampleAudit.report(),
            EnumSet.of(Part.PULL, Part.SIGNS),
            PaperSize.A3);
    List<String> sections =
        SvgText.elements(parse(page), "section").stream().map(e -> e.getAttribute("id")).toList();
    assertThat(sections).contains("heed", "pull", "signs").doesNotContain("map", "unload");
    assertThat(page).contains("href=\"#pull\"").doesNotContain("href=\"#unload\"");
  }
}
