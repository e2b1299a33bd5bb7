package skidway.job;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import skidway.erection.Schedule;
import skidway.plan.Task;
import skidway.site.Site;
import skidway.timber.Bundle;
import skidway.timber.Delivery;
import skidway.timber.Load;
import skidway.units.UnitSystem;

/**
 * Reads a job folder: {@code job.json}, {@code site.json}, {@code pieces.csv}, {@code bundles.csv}
 * and {@code loads.csv}. Reads on after a mistake, so that all of them are in one report.
 */
public final class JobReader {
  /** The input files in the order in which they are reported and fingerprinted. */
  static final List<String> FILES =
      List.of(
          JobHead.FILE, SiteReader.FILE, PiecesReader.FILE, BundlesReader.FILE, LoadsReader.FILE);

  private static final String HOLDS = "a job folder holds " + String.join(", ", FILES);

  private final Problems problems = new Problems();
  private final InputFiles input;
  private final List<SourceFile> files = new ArrayList<>();

  /** Texts that stand in for files, by name. */
  private final Map<String, String> texts;

  private List<Bundle> bundlesRead = List.of();

  private JobReader(Path folder, Map<String, String> texts) {
    this.texts = texts;
    this.input = new InputFiles(folder, HOLDS, problems);
  }

  /**
   * Reads and checks a job.
   *
   * @throws BadInput with everything that is wrong in it
   */
  public static Job read(Path folder) {
    JobReader reader = new JobReader(folder, Map.of());
    reader.requireFolder();
    Task task = reader.task();
    return new Job(folder, task, Fingerprint.of(reader.files), reader.problems.remarks(FILES));
  }

  /**
   * Judges a job as it would be with other texts in place of some of its files.
   *
   * @param texts by file name
   */
  static Judgement judge(Path folder, Map<String, String> texts) {
    JobReader reader = new JobReader(folder, texts);
    try {
      reader.task();
      return new Judgement(List.of(), reader.problems.remarks(FILES), reader.bundlesRead);
    } catch (BadInput e) {
      return new Judgement(
          reader.problems.shown(FILES), reader.problems.remarks(FILES), reader.bundlesRead);
    }
  }

  private void requireFolder() {
    Path folder = input.folder();
    if (!Files.isDirectory(folder)) {
      problems.add(
          new SourceFile(folder.toString(), "").whole(),
          Files.exists(folder) ? "a file" : "no such folder",
          "a job is a folder that holds " + String.join(", ", FILES),
          "name the job's folder");
      problems.throwIfAny(List.of());
    }
  }

  private Task task() {
    Optional<SourceFile> jobFile = file(JobHead.FILE, FileBounds.MOST_JSON_BYTES);
    Optional<SourceFile> siteFile = file(SiteReader.FILE, FileBounds.MOST_JSON_BYTES);
    Optional<SourceFile> piecesFile = file(PiecesReader.FILE, FileBounds.MOST_CSV_BYTES);
    Optional<SourceFile> bundlesFile = file(BundlesReader.FILE, FileBounds.MOST_CSV_BYTES);
    Optional<SourceFile> loadsFile = file(LoadsReader.FILE, FileBounds.MOST_CSV_BYTES);

    JobHead head = JobHead.read(jobFile.flatMap(f -> JsonTree.read(f, problems)), problems);
    UnitSystem units = head.units().orElse(UnitSystem.METRIC);
    Values values = new Values(problems, units, head.units().isPresent());
    Ids walls = new Ids("wall", problems);
    Ids truckStands = new Ids("truck stand", problems);
    Ids loadIds = new Ids("load", problems);
    Ids bundleIds = new Ids("bundle", problems);

    Optional<Fields> siteFields =
        siteFile
            .flatMap(f -> JsonTree.read(f, problems))
            .map(members -> new Fields(members, "a site", values));
    Optional<Site> site =
        new SiteReader(problems, walls, truckStands, head.settings()).read(siteFields);
    List<Load> loads = new LoadsReader(loadIds, truckStands).read(loadsFile, values);
    Map<String, BundlesReader.BundleRow> bundles =
        new BundlesReader(bundleIds, loadIds).read(bundlesFile, values);
    PiecesReader pieces = new PiecesReader(problems, walls, bundleIds, head.woods());
    Packing packing = new Packing(bundles);
    List<PiecesReader.PieceRow> fitting = packing.pack(pieces.read(piecesFile, values));
    site.ifPresent(s -> new OnWalls(s).check(fitting));
    Delivery delivery = new Delivery(loads, packing.bundles(pieces));

    bundlesRead = delivery.bundles();

    problems.throwIfAny(FILES);
    Schedule schedule = head.erection().schedule(delivery.loads(), head.settings(), problems);
    return new Task(
        head.name(), site.orElseThrow(), delivery, head.settings(), schedule, values.figures());
  }

  private Optional<SourceFile> file(String name, int mostBytes) {
    Optional<SourceFile> file =
        texts.containsKey(name)
            ? Optional.of(new SourceFile(name, texts.getOrDefault(name, "")))
            : input.read(name, mostBytes);
    file.ifPresent(files::add);
    return file;
  }
}
