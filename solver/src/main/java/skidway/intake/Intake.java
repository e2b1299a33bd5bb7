package skidway.intake;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import skidway.job.BadInput;
import skidway.job.JobDraft;
import skidway.job.JobTable;
import skidway.job.Judgement;
import skidway.job.Problem;
import skidway.units.Figures;
import skidway.units.UnitSystem;

/**
 * Takes a packing list into a job in two steps, so that a person sees what the columns are taken
 * for even when the list cannot be taken: {@link #open}, then {@link #take}; nothing is written
 * before {@link Imported#write}.
 */
public final class Intake {
  private final Reading reading;

  Intake(Reading reading) {
    this.reading = reading;
  }

  /**
   * Opens a list and proposes what its columns are.
   *
   * @throws BadInput if the job's folder or the file cannot be read at all
   */
  public static Intake open(Path job, Path file, Wishes wishes) {
    return new Intake(Reading.open(JobDraft.open(job), file, wishes));
  }

  /** How the file was read, for example {@code sheet "Packing list"}. */
  public String origin() {
    return reading.grid().origin();
  }

  /** The header's row; 0 if the list has none. */
  public int headerRow() {
    Header header = reading.header();
    return header.found() ? reading.grid().rows().get(header.rowIndex()).number() : 0;
  }

  /** Rows that are taken for timbers. */
  public int rows() {
    return reading.rows().size();
  }

  /** Rows that are left out, and why. */
  public List<String> leftOut() {
    return reading.leftOut();
  }

  /** What is odd about how earlier lists were read. */
  public List<Problem> remarks() {
    return reading.job().remarks();
  }

  public List<Column> columns() {
    return reading.columns();
  }

  /**
   * Reads the timbers and judges the job with them in it.
   *
   * @throws BadInput with everything that is wrong with the list
   */
  public Imported take() {
    Trouble trouble = reading.trouble();
    List<String> notes = new ArrayList<>(reading.notes());
    boolean any =
        !reading.rows().isEmpty()
            && (reading.header().found() || reading.table().has(Meaning.LENGTH));
    Optional<MarkPattern> pattern = any ? MarkChoice.of(reading, notes, trouble) : Optional.empty();
    Required.check(reading, pattern, trouble);
    trouble.throwIfAny();
    List<NewPiece> pieces = new Takings(reading, notes).pieces(pattern);
    UnitSystem units = reading.job().units().orElse(UnitSystem.METRIC);
    List<BundleRows.NewBundle> bundles =
        new BundleRows(reading.job().bundles(), units, notes, trouble)
            .of(pieces, reading.wishes().bundleSize());
    trouble.throwIfAny();
    JobTable loads = new LoadRows(reading, trouble, notes).with(bundles);
    trouble.throwIfAny();
    Merge.Merged merged =
        new Merge(reading.job().pieces(), reading.job().bundles(), units).with(bundles);
    Map<String, String> texts =
        reading.job().texts(merged.pieces(), merged.bundles(), loads, reading.remembered(pattern));
    Judgement judgement = reading.job().judge(texts);
    Retelling retelling = retelling(merged, loads, bundles);
    retelling.tell(judgement.problems(), trouble);
    trouble.throwIfAny();
    Set<String> marks = new HashSet<>();
    bundles.forEach(b -> b.pieces().forEach(p -> marks.add(p.field("mark"))));
    return new Imported(
        reading.job(),
        texts,
        loadIds(bundles),
        bundles.size(),
        marks.size(),
        notes,
        WeightCheck.sentences(judgement.bundles(), marks, new Figures(units)),
        merged.loadsWereThere(),
        merged.gone(),
        merged.differences(),
        reading.wishes().replace(),
        retelling.elsewhere());
  }

  private static List<String> loadIds(List<BundleRows.NewBundle> bundles) {
    Set<String> ids = new LinkedHashSet<>();
    bundles.forEach(b -> ids.add(b.fields().getOrDefault("load", "")));
    return List.copyOf(ids);
  }

  private Retelling retelling(
      Merge.Merged merged, JobTable loads, List<BundleRows.NewBundle> bundles) {
    Map<Integer, ListRow> pieceRows = new HashMap<>();
    Map<Integer, ListRow> bundleRows = new HashMap<>();
    int pieceLine = merged.keptPieces() + 2;
    int bundleLine = merged.keptBundles() + 2;
    for (BundleRows.NewBundle bundle : bundles) {
      bundleRows.put(bundleLine++, bundle.pieces().get(0).row());
      for (NewPiece piece : bundle.pieces()) {
        pieceRows.put(pieceLine++, piece.row());
      }
    }
    Map<Integer, ListRow> loadRows = new HashMap<>();
    ListRow first = bundles.get(0).pieces().get(0).row();
    for (int i = reading.job().loads().rows().size(); i < loads.rows().size(); i++) {
      loadRows.put(i + 2, first);
    }
    Map<String, JobTable> tables = new LinkedHashMap<>();
    tables.put("pieces.csv", merged.pieces());
    tables.put("bundles.csv", merged.bundles());
    tables.put("loads.csv", loads);
    return new Retelling(
        reading.table(),
        tables,
        Map.of("pieces.csv", pieceRows, "bundles.csv", bundleRows, "loads.csv", loadRows));
  }
}
