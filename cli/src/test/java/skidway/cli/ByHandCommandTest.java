package skidway.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** From a list and a tape to paper on a site without a machine. */
final class ByHandCommandTest {
  private static final String US =
      """
      units us
      name "Larch Ridge"
      course 8"
      walls thick 6"
      wall W1 east 28'
      wall W2 north 24'
      wall W3 west 28'
      wall W4 south 24'
      deck deck under house high 2' floor 50 psf
      yard south 6' off W1 full length wide 24' soil clay
      truck gate 44' off W1 middle long 30' wide 9'
      boundary around 60'
      """;
  private static final String METRIC =
      """
      units metric
      name "Lärchenhang"
      course 0.20
      walls thick 0.15
      wall W1 east 8.5344
      wall W2 north 7.3152
      wall W3 west 8.5344
      wall W4 south 7.3152
      yard south 1.8 off W1 full length wide 7.5 soil clay
      truck gate 13.5 off W1 middle long 9 wide 2.7
      boundary around 18
      """;

  @TempDir private static Path temp = Path.of("");
  private static Path us = Path.of("");
  private static Path metric = Path.of("");

  @BeforeAll
  static void stage() throws IOException {
    us = staged("us", US);
    metric = staged("metric", METRIC);
  }

  private static Path staged(String name, String site) throws IOException {
    Path job = Files.createDirectory(temp.resolve(name));
    Files.writeString(job.resolve("site.txt"), site);
    String folder = job.toString();
    String list = DemoFolder.ALL.resolve("lists/house-28x24.csv").toString();
    fine("site", folder);
    fine("import", folder, list, "--load", "L1", "--arrival", "2031-05-06T08:00");
    cheapPiles(job.resolve("job.json"));
    assertThat(fine("check", folder)).contains("people carry every timber off the truck");
    assertThat(fine("stage", folder, "--effort", "200")).contains("off truck", "8 of 8");
    fine("print", folder, "--no-pdf", "--only", "unload,hours,signs,tags");
    return job;
  }

  private static String fine(String... words) {
    Shell run = Shell.run(words);
    assertThat(run.code()).as(run.out() + run.err()).isZero();
    return run.out();
  }

  private static Stream<Path> jobs() {
    return Stream.of(us, metric);
  }

  private static String packet(Path job) throws IOException {
    return Files.readString(job.resolve("out/packet-001-unload-hours-signs-tags.html"));
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void theAuditAgreesAndSaysWhatDoesNotApply(Path job) {
    assertThat(fine("audit", job.toString())).contains("nothing found", "No machine unloads");
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void theSheetHasABoxForEachTimberAndNothingOfAMachine(Path job) throws IOException {
    String packet = packet(job);
    assertThat(packet)
        .contains("Unloading sheet, by hand", "timbers carried off by hand", ">Off the truck<")
        .contains("Timbers are loose, without bands")
        .doesNotContain("confirmed by", "to spare", "Bands are under tension");
    String sheet =
        packet.substring(packet.indexOf("id=\"unload\""), packet.indexOf("id=\"hours\""));
    assertThat(sheet.split("class=\"box\"", -1)).hasSize(1 + 80);
    assertThat(Files.readString(job.resolve("out/tags.html")))
        .contains("designer, local codes govern.", "too heavy for people: lifting device.")
        .doesNotContain("chart");
  }

  /** W1-02-1 is the first of the top layer of three in the bundle that comes off first. */
  @Test
  void theTopLayerComesOffFirstAndIsLaidLowest() throws IOException {
    assertThat(Files.readString(us.resolve("pieces.csv"))).containsPattern("W1-02-1,.*,B01,3");
    String packet = packet(us);
    int first = packet.indexOf("class=\"turn\"");
    assertThat(packet.substring(first, packet.indexOf("</tr>", first)))
        .contains("W1-02-1", ">1 of 3<");
  }

  @Test
  void wavesArePlannedAndPrintedWithoutAWordOfAMachine() throws IOException {
    Path job = DemoFolder.copyOf(us, temp.resolve("waves"));
    String folder = job.toString();
    assertThat(fine("waves", folder))
        .contains("off truck", "Waves save")
        .doesNotContain("by machine", "trips", "audit finds");
    assertThat(job.resolve("out/waves-001.html"))
        .content()
        .contains("Timbers lie loose, without bands", "local codes govern", ">by hand<")
        .doesNotContain("the machine", "by machine", "Cut bands");
    assertThat(fine("audit", folder)).contains("with its waves: nothing found");
    fine("print", folder, "--no-pdf", "--only", "pull,signs");
    assertThat(job.resolve("out/packet-001-pull-signs.html")).content().contains("Pile signs");
  }

  /** So that waves pay on a house as small as this. */
  private static void cheapPiles(Path file) throws IOException {
    String job = Files.readString(file);
    assertThat(job).contains("\"settings\": {");
    Files.writeString(
        file,
        job.replace(
            "\"settings\": {",
            "\"settings\": {\"pileSetUp\": {\"value\": 5, \"reason\": \"test\"},"
                + " \"layPiece\": {\"value\": 1, \"reason\": \"test\"}"));
  }

  /** The truck is half unloaded and timbers are in the walls when the rest is planned anew. */
  @Test
  void theRestIsPlannedAnewAndWhatLiesStays() throws IOException {
    Path job = DemoFolder.copyOf(metric, temp.resolve("anew"));
    String folder = job.toString();
    fine("record", folder, "arrived", "L1");
    fine("record", folder, "placed", "B01", "as", "planned");
    fine("record", folder, "pulled", "W1-01-1");
    fine("record", folder, "missing", "B07");
    assertThat(fine("restage", folder, "--effort", "200", "--suppose", "missing B08"))
        .contains("as recorded", "missing B08", "what lies stays where it lies")
        .contains("no plan was written");
    assertThat(fine("restage", folder, "--effort", "200"))
        .contains("1 bundles lie", "7 of 7 bundles placed", "off truck", "as before")
        .contains("what lies stays where it lies", "Tags: print --changed-since 1")
        .doesNotContain("moves", "afresh");
    assertThat(fine("audit", folder)).contains("nothing found");
    Path sheet = job.resolve("changes.html");
    fine("changes", folder, "--out", sheet.toString());
    assertThat(sheet)
        .content()
        .contains("What lies already</h2><p>No machine is here: what lies stays where it lies.")
        .contains("As it will lie")
        .doesNotContain("Moves before the next truck", ">Moves<");
    fine("print", folder, "--no-pdf", "--only", "unload");
    assertThat(job.resolve("out/packet-002-unload.html"))
        .content()
        .contains(">B02<")
        .doesNotContain(">B01<");
  }

  /** A late load is reckoned with by planning anew. */
  @Test
  void aLateLoadIsReckonedWithByHandToo() throws IOException {
    Path job = DemoFolder.copyOf(metric, temp.resolve("late"));
    assertThat(fine("stage", job.toString(), "--hedge", "L1=0..1days", "--effort", "100"))
        .contains("What each plan costs when loads are late", "Plan " + job + "/plans/002.json");
  }
}
