package skidway.staging;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Times single calls of {@link HotPath}. Run by the Maven profile {@code benchmark}. */
class HotPathBenchmark {
  @Test
  void writeTheTable() throws IOException, RunnerException {
    var options = new OptionsBuilder().include(HotPath.class.getName() + "\\.").build();
    List<String> lines = new ArrayList<>();
    lines.add("| call | bundles | time | error, 99.9 % |");
    lines.add("|---|---|---|---|");
    for (RunResult run : new Runner(options).run()) {
      var result = run.getPrimaryResult();
      lines.add(
          String.format(
              Locale.ROOT,
              "| %s | %s | %,.0f ns | %,.0f ns |",
              result.getLabel(),
              run.getParams().getParam("bundles"),
              result.getScore(),
              result.getScoreError()));
    }
    BenchmarkPage.write("calls", lines);
  }
}
