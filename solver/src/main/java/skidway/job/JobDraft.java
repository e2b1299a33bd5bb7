package skidway.job;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import skidway.site.Site;
import skidway.site.TruckStand;
import skidway.site.Wall;
import skidway.units.UnitSystem;

/**
 * A job in the making: its tables as they stand, what is known of its units and site, and the way
 * to change several of its files together. Files may be missing.
 */
public final class JobDraft {
  private final Path folder;
  private final Map<String, SourceFile> files = new LinkedHashMap<>();
  private final JobHead head;
  private final Optional<Site> site;
  private final Map<String, JobTable> tables = new LinkedHashMap<>();
  private final Optional<LocatedNode.Members> imports;
  private final List<SavedList> lists;
  private final List<Problem> remarks;

  private JobDraft(Path folder) {
    this.folder = folder;
    Problems judgedLater = new Problems();
    Optional<SourceFile> jobFile = file(JobHead.FILE, FileBounds.MOST_JSON_BYTES);
    this.head = JobHead.read(jobFile.flatMap(f -> JsonTree.read(f, judgedLater)), judgedLater);
    this.site = site(judgedLater);
    table(PiecesReader.FILE, PiecesReader.REQUIRED, PiecesReader.OPTIONAL);
    table(BundlesReader.FILE, BundlesReader.REQUIRED, BundlesReader.OPTIONAL);
    table(LoadsReader.FILE, LoadsReader.REQUIRED, LoadsReader.OPTIONAL);
    Problems problems = new Problems();
    this.imports =
        file(ImportsFile.FILE, FileBounds.MOST_JSON_BYTES).flatMap(f -> JsonTree.read(f, problems));
    this.lists = imports.map(i -> ImportsFile.read(i, problems)).orElse(List.of());
    problems.throwIfAny(List.of(ImportsFile.FILE));
    this.remarks = problems.remarks(List.of(ImportsFile.FILE));
  }

  /**
   * Opens a job's folder.
   *
   * @throws BadInput if it is no folder, or a table in it cannot be taken apart
   */
  public static JobDraft open(Path folder) {
    if (!Files.isDirectory(folder)) {
      throw new BadInput(
          List.of(
              new SourceFile(folder.toString(), "")
                  .whole()
                  .problem(
                      Files.exists(folder) ? "a file" : "no such folder",
                      "a job is a folder that holds " + String.join(", ", JobReader.FILES),
                      "name the job's folder, or make it")));
    }
    return new JobDraft(folder);
  }

  private Optional<Site> site(Problems judgedLater) {
    Values values =
        new Values(judgedLater, head.units().orElse(UnitSystem.METRIC), head.units().isPresent());
    Optional<Fields> fields =
        file(SiteReader.FILE, FileBounds.MOST_JSON_BYTES)
            .flatMap(f -> JsonTree.read(f, judgedLater))
            .map(members -> new Fields(members, "a site", values));
    Ids walls = new Ids("wall", judgedLater);
    Ids stands = new Ids("truck stand", judgedLater);
    return new SiteReader(judgedLater, walls, stands, head.settings()).read(fields);
  }

  private void table(String name, List<String> required, List<String> optional) {
    tables.put(name, JobTable.of(file(name, FileBounds.MOST_CSV_BYTES), required, optional));
  }

  /** A file that is there must be readable; one that is missing may come later. */
  private Optional<SourceFile> file(String name, int mostBytes) {
    if (!Files.exists(folder.resolve(name))) {
      return Optional.empty();
    }
    Problems problems = new Problems();
    Optional<SourceFile> file = new InputFiles(folder, "", problems).read(name, mostBytes);
    problems.throwIfAny(List.of(name));
    file.ifPresent(f -> files.put(name, f));
    return file;
  }

  /** The job's units; empty if {@code job.json} does not say. */
  public Optional<UnitSystem> units() {
    return head.units();
  }

  /** The ids of the site's walls; empty if there is no sound site yet. */
  public List<String> walls() {
    return site.map(s -> s.walls().stream().map(Wall::id).toList()).orElse(List.of());
  }

  /** The ids of the site's truck stands; empty if there is no sound site yet. */
  public List<String> truckStands() {
    return site.map(s -> s.truckStands().stream().map(TruckStand::id).toList()).orElse(List.of());
  }

  /** Whether a species is known, in the job or in the handbook. */
  public boolean knowsWood(String name) {
    return head.woods().find(name).isPresent();
  }

  public JobTable pieces() {
    return table(PiecesReader.FILE);
  }

  public JobTable bundles() {
    return table(BundlesReader.FILE);
  }

  public JobTable loads() {
    return table(LoadsReader.FILE);
  }

  private JobTable table(String name) {
    return Optional.ofNullable(tables.get(name)).orElseThrow();
  }

  /** How packing lists were read so far. */
  public List<SavedList> lists() {
    return lists;
  }

  /** What is odd about {@code imports.json}; the fields that nobody knows stay in it. */
  public List<Problem> remarks() {
    return remarks;
  }

  /** The texts of the files that a changed job needs, by name. */
  public Map<String, String> texts(
      JobTable pieces, JobTable bundles, JobTable loads, List<SavedList> read) {
    Map<String, String> texts = new LinkedHashMap<>();
    texts.put(PiecesReader.FILE, pieces.text());
    texts.put(BundlesReader.FILE, bundles.text());
    texts.put(LoadsReader.FILE, loads.text());
    texts.put(ImportsFile.FILE, ImportsText.of(read, imports));
    return texts;
  }

  /** Judges the job with other texts in place of some of its files. */
  public Judgement judge(Map<String, String> texts) {
    return JobReader.judge(folder, texts);
  }

  /**
   * Writes files of the job: all of them, or none.
   *
   * @return the names of those that changed
   * @throws NotWritten if somebody else writes or wrote meanwhile, or the disk refuses
   */
  public List<String> write(Map<String, String> texts) {
    Path plans = folder.resolve("plans");
    try {
      Files.createDirectories(plans);
      try (WriteLock lock = WriteLock.of(plans)) {
        for (String name : texts.keySet()) {
          lock.requireUnchanged(folder.resolve(name), asRead(name));
        }
        Map<String, String> changed = new LinkedHashMap<>(texts);
        changed.entrySet().removeIf(e -> asRead(e.getKey()).equals(Optional.of(e.getValue())));
        AtomicFile.writeAll(folder, changed);
        return new ArrayList<>(changed.keySet());
      }
    } catch (IOException e) {
      throw new NotWritten(
          folder,
          "it cannot be written to (" + DiskWords.of(e) + ")",
          "look whether it may be written to and has room",
          e);
    }
  }

  private Optional<String> asRead(String name) {
    return Optional.ofNullable(files.get(name)).map(SourceFile::text);
  }
}
