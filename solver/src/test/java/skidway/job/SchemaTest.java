package skidway.job;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import skidway.plan.StepKind;
import skidway.plan.Task;
import skidway.plan.Way;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.testkit.SiteBuilder;
import skidway.testkit.Tasks;

/** The published schemas say what the readers read, no more and no less, as far as form goes. */
final class SchemaTest {
  private static final Path DEMO = Path.of("../demo-data");

  /** What a form can say: of which kind a value is, and which words may stand somewhere. */
  private static final Pattern FORM =
      Pattern.compile(
          "\"\\w+\" is (one of|a list|an object|a text|true or false|a number|a whole number)"
              + "|an id is a text|is an object in braces|a point is a list|add the field"
              + "|a voltage is text");

  @TempDir Path temp;

  private final AtomicInteger refusedForForm = new AtomicInteger();

  static Stream<Path> demoFiles() throws IOException {
    try (Stream<Path> files = Files.walk(DEMO)) {
      return files
          .filter(f -> f.toString().matches(".*/(job|site|plan)\\.json"))
          .sorted()
          .toList()
          .stream();
    }
  }

  @ParameterizedTest
  @MethodSource("demoFiles")
  void everyDemoFileIsAsTheSchemaSays(Path file) throws IOException {
    String stem = String.valueOf(file.getFileName()).replace(".json", "");
    assertThat(new Schema(stem).wrongPlaces(Schema.tree(Files.readString(file)))).isEmpty();
  }

  @Test
  void thereAreDemoFilesOfEveryKind() throws IOException {
    assertThat(demoFiles().map(f -> String.valueOf(f.getFileName())))
        .contains("job.json", "site.json", "plan.json");
  }

  @ParameterizedTest
  @ValueSource(strings = {"job", "site"})
  void schemaAndReaderRefuseTheSame(String name) {
    JobFolder folder = JobFolder.full(temp);
    Schema schema = new Schema(name);
    JsonNode file = Schema.tree(folder.text(name + ".json"));
    assertThat(schema.wrongPlaces(file)).isEmpty();
    List<String> differ =
        JsonMutations.of(file).parallelStream()
            .flatMap(m -> compare(m, schema, problems(folder, name + ".json", m)).stream())
            .toList();
    assertThat(differ).isEmpty();
    assertThat(refusedForForm).hasValueGreaterThan(name.equals("job") ? 50 : 800);
  }

  @Test
  void schemaAndReaderRefuseTheSamePlans() throws IOException {
    Task task = Tasks.task(SiteBuilder.aSite().build());
    Path file = PlanFiles.write(temp, SamplePlans.exact(1));
    JsonNode plan = Schema.tree(Files.readString(file));
    Schema schema = new Schema("plan");
    assertThat(schema.wrongPlaces(plan)).isEmpty();
    List<String> differ = new ArrayList<>();
    for (JsonMutations.Mutated m : JsonMutations.of(plan)) {
      Files.writeString(file, m.file().toString());
      differ.addAll(compare(m, schema, problems(() -> PlanFiles.read(file, task))));
    }
    assertThat(differ).isEmpty();
    assertThat(refusedForForm).hasValueGreaterThan(500);
  }

  @Test
  void schemaAndReaderRefuseTheSameWaves() throws IOException {
    Path planFile = PlanFiles.write(temp, SamplePlans.exact(1));
    PlanMark mark = PlanMark.of(SamplePlans.exact(1), planFile);
    Path file = WaveFiles.write(temp, SampleWaves.exact(mark));
    JsonNode waves = Schema.tree(Files.readString(file));
    Schema schema = new Schema("waves");
    assertThat(schema.wrongPlaces(waves)).isEmpty();
    List<String> differ = new ArrayList<>();
    for (JsonMutations.Mutated m : JsonMutations.of(waves)) {
      Files.writeString(file, m.file().toString());
      List<Problem> problems = problems(() -> WaveFiles.read(planFile, SamplePlans.exact(1)));
      differ.addAll(compare(m, schema, problems));
    }
    assertThat(differ).isEmpty();
    assertThat(refusedForForm).hasValueGreaterThan(500);
  }

  /** What the schema refuses, the reader does; what the reader refuses for its form, the schema. */
  private List<String> compare(JsonMutations.Mutated m, Schema schema, List<Problem> problems) {
    List<String> differ = new ArrayList<>();
    List<String> wrong = schema.wrongPlaces(m.file());
    boolean isNull = m.what().startsWith("with null");
    if (problems.isEmpty() && !wrong.isEmpty() && !isNull) {
      differ.add("The schema alone refuses " + m.pointer() + " " + m.what());
    }
    Optional<Problem> form = problems.stream().filter(SchemaTest::isOfForm).findFirst();
    refusedForForm.addAndGet(form.isPresent() ? 1 : 0);
    boolean here = wrong.stream().anyMatch(w -> near(w, m.pointer()));
    if (form.isPresent() && !here) {
      differ.add(m.pointer() + " " + m.what() + ": only the reader says " + form.get().text());
    }
    return differ;
  }

  private static boolean isOfForm(Problem p) {
    boolean sense = p.found().startsWith("unknown ") || p.found().contains("second ");
    boolean named = p.wayOut().contains("name one of"); // an id that is none of those there
    return !sense && !named && FORM.matcher(p.allowed() + p.wayOut()).find();
  }

  /** A field that is missing is told of its object, one that is wrong of itself or of its parts. */
  private static boolean near(String wrong, String changed) {
    return wrong.startsWith(changed) || changed.startsWith(wrong);
  }

  /** Of a job with one changed file, read from memory. */
  private static List<Problem> problems(
      JobFolder folder, String changed, JsonMutations.Mutated mutated) {
    Map<String, String> texts = new HashMap<>();
    JobReader.FILES.forEach(file -> texts.put(file, folder.text(file)));
    texts.put(changed, mutated.file().toString());
    return JobReader.judge(folder.path(), texts).problems();
  }

  private static List<Problem> problems(Runnable reading) {
    try {
      reading.run();
      return List.of();
    } catch (BadInput e) {
      return e.problems();
    }
  }

  static Stream<Map.Entry<String, String>> words() {
    return Stream.of(
        Map.entry(
            "job \"setting\"", words(Arrays.stream(Setting.values()).map(Setting::key).toList())),
        Map.entry("plan \"rule\"", words(Arrays.stream(Rule.values()).map(Rule::id).toList())),
        Map.entry("plan \"kind\"", words(Arrays.stream(StepKind.values()).map(Words::of).toList())),
        Map.entry("waves \"way\"", words(Arrays.stream(Way.values()).map(Words::of).toList())));
  }

  private static String words(List<String> words) {
    return words.stream().collect(Collectors.joining("\", \"", "[\"", "\"]"));
  }

  /** With {@code -Dskidway.update=true} the words of rules and settings are written anew. */
  @ParameterizedTest
  @MethodSource("words")
  void wordsOfTheProgramAreWordsOfTheSchema(Map.Entry<String, String> entry) throws IOException {
    String[] where = entry.getKey().split(" ", -1);
    String text = Schemas.of(where[0]);
    String line = where[1] + ": {\"enum\": ";
    if (Boolean.getBoolean("skidway.update")) {
      String quoted = Pattern.quote(line);
      String now = java.util.regex.Matcher.quoteReplacement(line + entry.getValue());
      Path file = Path.of("src/main/resources/skidway/schema/" + where[0] + ".json");
      text = Files.readString(file).replaceAll(quoted + "\\[[^]]*\\]", now);
      Files.writeString(file, text);
    }
    assertThat(text).contains(line + entry.getValue());
  }
}
