package skidway.job;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.units.UnitSystem;

/**
 * Reads and writes the plans of a job, {@code plans/001.json} and so on: one file a revision, never
 * overwritten.
 */
public final class PlanFiles {
  private static final Pattern NAME = Pattern.compile("(\\d{3,6})\\.json");

  /** What a plan of a hundred bundles takes. */
  private static final int ROOM_BYTES = 200_000;

  private PlanFiles() {}

  /**
   * The plan file with the highest number, if the job has any.
   *
   * @throws BadInput if the folder cannot be listed
   */
  public static Optional<Path> newest(Path folder) {
    Path plans = plans(folder);
    if (!Files.isDirectory(plans)) {
      return Optional.empty();
    }
    try (Stream<Path> files = Files.list(plans)) {
      return files
          .filter(f -> revision(f) > 0)
          .max(Comparator.comparingInt(PlanFiles::revision).thenComparing(f -> f));
    } catch (IOException e) {
      throw unreadable(plans, e);
    }
  }

  /** The plan file of a revision, if the job still has it. */
  public static Optional<Path> ofRevision(Path folder, int revision) {
    return Optional.of(file(plans(folder), revision)).filter(Files::isRegularFile);
  }

  /** The revision that the next plan of a job has. */
  public static int nextRevision(Path folder) {
    return newest(folder).map(PlanFiles::revision).orElse(0) + 1;
  }

  /**
   * SHA-256 of a plan file, in hexadecimal: what {@link Plan#previous} of the next one is.
   *
   * @throws BadInput if it cannot be read
   */
  public static String fingerprint(Path file) {
    try {
      return Fingerprint.of(Files.readAllBytes(file));
    } catch (IOException e) {
      throw unreadable(file, e);
    }
  }

  /**
   * Reads a plan file.
   *
   * @param task gives the spots that the plan may name by their id alone
   * @throws BadInput if it is not a plan, or of another revision than its name says; whether the
   *     plan is any good is not judged
   */
  public static Plan read(Path file, Task task) {
    Problems problems = new Problems();
    String name = String.valueOf(file.getFileName());
    Optional<Plan> plan =
        plan(file, problems)
            .flatMap(fields -> new PlanReader(problems, task, revision(file)).plan(fields));
    problems.throwIfAny(List.of(name));
    return plan.orElseThrow();
  }

  /**
   * How many events a plan file heeds, whatever else is wrong with it.
   *
   * @throws BadInput if it is no plan at all
   */
  static int heeded(Path file) {
    Problems problems = new Problems();
    int events =
        plan(file, problems)
            .filter(fields -> fields.has("events"))
            .map(fields -> Plain.whole(fields, "events", 0))
            .orElse(0);
    problems.throwIfAny(List.of(String.valueOf(file.getFileName())));
    return events;
  }

  private static Optional<Fields> plan(Path file, Problems problems) {
    return fields(file, "a plan", "plans are files such as plans/001.json", problems);
  }

  /**
   * Opens a JSON file of the plans' folder, all of it in SI.
   *
   * @param what it is of, with its article
   * @param allowed what such files are
   */
  static Optional<Fields> fields(Path file, String what, String allowed, Problems problems) {
    Path folder = Objects.requireNonNullElse(file.toAbsolutePath().getParent(), file);
    return new InputFiles(folder, allowed, problems)
        .read(String.valueOf(file.getFileName()), FileBounds.MOST_PLAN_BYTES)
        .flatMap(source -> JsonTree.read(source, problems))
        .map(tree -> new Fields(tree, what, new Values(problems, UnitSystem.METRIC, true)));
  }

  /**
   * Finds out before a long search whether its plan could be written; leaves no file behind.
   *
   * @throws NotWritten if another writer is at work or the disk refuses
   */
  public static void requireRoom(Path folder) {
    Path plans = plans(folder);
    try {
      Files.createDirectories(plans);
      try (WriteLock lock = WriteLock.of(plans)) {
        lock.tryRoom(ROOM_BYTES);
      }
    } catch (IOException e) {
      throw refused(plans, e);
    }
  }

  /**
   * Writes a plan as the job's next file.
   *
   * @param plan its revision is {@link #nextRevision}
   * @return the file written
   * @throws NotWritten if another writer is at work or was quicker, or the disk refuses
   */
  public static Path write(Path folder, Plan plan) {
    Path plans = plans(folder);
    byte[] bytes = PlanText.of(plan).getBytes(StandardCharsets.UTF_8);
    try {
      Files.createDirectories(plans);
      try (WriteLock lock = WriteLock.of(plans)) {
        return lock.write(plan.revision(), file(plans, plan.revision()), bytes);
      }
    } catch (IOException e) {
      throw refused(plans, e);
    }
  }

  static NotWritten refused(Path plans, IOException e) {
    return new NotWritten(
        plans,
        "it cannot be written to (" + DiskWords.of(e) + ")",
        "look whether it is a folder, may be written to and has room",
        e);
  }

  private static BadInput unreadable(Path path, IOException e) {
    Problem problem =
        new SourceFile(path.toString(), "")
            .whole()
            .problem(
                "something that cannot be read (" + DiskWords.of(e) + ")",
                "plans are files such as plans/001.json",
                "give yourself the right to read it, or name another");
    return new BadInput(List.of(problem), 0);
  }

  /** What a plan's file is called without its ending; what is made from it is called after it. */
  public static String stem(Path file) {
    return String.valueOf(file.getFileName()).replaceFirst("\\.json$", "");
  }

  /** The revision in a file's name; 0 for other files. */
  static int revision(Path file) {
    Matcher m = NAME.matcher(String.valueOf(file.getFileName()));
    return m.matches() ? Integer.parseInt(m.group(1)) : 0;
  }

  static Path plans(Path folder) {
    return folder.resolve("plans");
  }

  private static Path file(Path plans, int revision) {
    return plans.resolve(String.format(Locale.ROOT, "%03d.json", revision));
  }
}
