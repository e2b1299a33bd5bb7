package skidway.job;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import skidway.rules.Settings;
import skidway.site.Site;
import skidway.units.UnitSystem;

/**
 * The file {@code site.json} of a folder as something that is written anew from a description. What
 * was told the last time stays in {@code .site.told.json}, so that what somebody added by hand is
 * known from what the description no longer says.
 */
public final class SiteFile {
  private static final String TOLD = ".site.told.json";
  private static final String HOLDS = "the folder holds the description of a site";

  /** What the file cannot do without, and a line that says it. */
  private static final List<Needed> NEEDED =
      List.of(
          new Needed("name", "name \"Two Herons, lot 7\""),
          new Needed("course", "course 6\""),
          new Needed("boundary", "boundary around 30'"),
          new Needed("walls", "wall W1 east 36' thick 8\""),
          new Needed("truckStands", "truck T1 12' off W2 middle long 30' wide 9'"));

  private final Path folder;
  private final Problems problems = new Problems();
  private final Optional<JobHead> head;
  private String description = "";
  private Path beside;

  private SiteFile(Path folder) {
    this.folder = folder;
    this.beside = folder;
    this.head = read(JobHead.FILE).map(tree -> JobHead.read(Optional.of(tree), problems));
  }

  private record Needed(String field, String line) {}

  /**
   * A site that may be written.
   *
   * @param text of {@code site.json}
   * @param told what the description alone says, as text
   * @param kept a sentence for each thing that was added by hand and stays
   */
  public record Checked(Site site, String text, String told, List<String> kept) {}

  /**
   * Opens a folder, which need not hold anything but a description yet.
   *
   * @throws BadInput if it is no folder
   */
  public static SiteFile of(Path folder) {
    if (!Files.isDirectory(folder)) {
      Problems problems = new Problems();
      problems.add(
          new SourceFile(folder.toString(), "").whole(),
          Files.exists(folder) ? "a file" : "no such folder",
          "a job is a folder",
          "make the folder, or name another");
      problems.throwIfAny(List.of());
    }
    return new SiteFile(folder);
  }

  public Problems problems() {
    return problems;
  }

  /** The units of {@code job.json}, when there is one. */
  public Optional<UnitSystem> units() {
    return head.flatMap(JobHead::units);
  }

  public Optional<String> jobName() {
    return head.map(JobHead::name).filter(name -> !name.isEmpty());
  }

  public Settings settings() {
    return head.map(JobHead::settings).orElse(Settings.defaults());
  }

  /** The description; empty after a problem. */
  public Optional<SourceFile> description(Path file) {
    beside = Objects.requireNonNullElse(file.toAbsolutePath().getParent(), folder);
    description = String.valueOf(file.getFileName());
    return new InputFiles(beside, HOLDS, problems).read(description, FileBounds.MOST_TEXT_BYTES);
  }

  /** A drawing in the folder of the description; empty after a problem. */
  public Optional<SourceFile> drawing(String name) {
    boolean inFolder = name.matches("[^/\\\\]+") && !name.equals("..");
    if (!inFolder) {
      problems.add(
          new SourceFile(description, "").whole(),
          "a drawing called " + Quote.found(name),
          "a drawing lies beside the description",
          "copy it there and name it alone");
      return Optional.empty();
    }
    return new InputFiles(beside, HOLDS, problems).read(name, FileBounds.MOST_TEXT_BYTES);
  }

  /**
   * Writes a description anew, whole or not at all.
   *
   * @throws NotWritten if the disk refuses
   */
  public static void describe(Path file, String text) {
    try {
      AtomicFile.write(file, text.getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new NotWritten(
          file,
          "it cannot be written to (" + DiskWords.of(e) + ")",
          "look whether its folder is there",
          e);
    }
  }

  /**
   * Joins what was told with the file that is there, and reads it as every command does.
   *
   * @throws BadInput with everything that is wrong
   */
  public Checked check(LocatedNode.Members told, UnitSystem units, boolean replace) {
    SiteMerge merge = new SiteMerge(problems);
    Optional<LocatedNode.Members> old = replace ? Optional.empty() : read(SiteReader.FILE);
    throwIfAny();
    LocatedNode.Members all = old.map(o -> merge.merge(told, o, read(TOLD))).orElse(told);
    throwIfAny();
    complete(all);
    throwIfAny();
    SiteReader reader =
        new SiteReader(
            problems, new Ids("wall", problems), new Ids("truck stand", problems), settings());
    Optional<Site> site =
        reader.read(Optional.of(new Fields(all, "a site", new Values(problems, units, true))));
    throwIfAny();
    return new Checked(site.orElseThrow(), JsonLines.of(all), JsonLines.of(told), merge.kept());
  }

  private void complete(LocatedNode.Members all) {
    for (Needed needed : NEEDED) {
      if (!all.fields().containsKey(needed.field())) {
        missing(all.place(), needed);
      }
    }
    if (all.fields().get("machine") instanceof LocatedNode.Members machine) {
      for (Needed needed :
          List.of(
              new Needed("stands", "stand M1 20' off W1 middle"),
              new Needed("chart", "chart 10' 4000 lb, 15' 2500 lb"))) {
        if (!machine.fields().containsKey(needed.field())) {
          missing(machine.place(), needed);
        }
      }
    }
  }

  private void missing(Place place, Needed needed) {
    String kind = needed.line().split(" ", 2)[0];
    problems.add(
        place,
        "no line \"" + kind + '"',
        "a site needs one, as in: " + needed.line(),
        "add it, or \"" + needed.field() + "\" to " + SiteReader.FILE);
  }

  /** What is odd, in file order. */
  public List<Problem> remarks() {
    return problems.remarks(files());
  }

  /**
   * Ends the reading if anything is wrong.
   *
   * @throws BadInput with all problems in file order
   */
  public void throwIfAny() {
    problems.throwIfAny(files());
  }

  private List<String> files() {
    return List.of(JobHead.FILE, description, SiteReader.FILE, TOLD);
  }

  /**
   * Writes the file, whole or not at all.
   *
   * @throws NotWritten if the disk refuses
   */
  public Path write(Checked checked) {
    Path file = folder.resolve(SiteReader.FILE);
    try {
      AtomicFile.write(file, checked.text().getBytes(StandardCharsets.UTF_8));
      AtomicFile.write(folder.resolve(TOLD), checked.told().getBytes(StandardCharsets.UTF_8));
      return file;
    } catch (IOException e) {
      throw new NotWritten(
          folder,
          "it cannot be written to (" + DiskWords.of(e) + ")",
          "look whether it is a folder, may be written to and has room",
          e);
    }
  }

  private Optional<LocatedNode.Members> read(String name) {
    return Files.exists(folder.resolve(name))
        ? new InputFiles(folder, HOLDS, problems)
            .read(name, FileBounds.MOST_JSON_BYTES)
            .flatMap(source -> JsonTree.read(source, problems))
        : Optional.empty();
  }
}
