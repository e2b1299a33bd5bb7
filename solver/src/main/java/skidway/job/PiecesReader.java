package skidway.job;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import skidway.timber.Moisture;
import skidway.timber.PackedPiece;
import skidway.timber.Piece;
import skidway.timber.Section;
import skidway.timber.Species;

/** Reads {@code pieces.csv}: one timber a row, with its place in the building and its bundle. */
final class PiecesReader {
  static final String FILE = "pieces.csv";
  static final List<String> REQUIRED =
      List.of(
          "mark",
          "wall",
          "course",
          "position",
          "length",
          "width",
          "height",
          "species",
          "moisture",
          "bundle",
          "layer");
  static final List<String> OPTIONAL = List.of("from_left", "fill", "mass");

  private final MoistureCell moistures = new MoistureCell();
  private final Ids marks;
  private final Ids walls;
  private final Ids bundles;
  private final WoodCells wood;
  private final List<PieceRow> rows = new ArrayList<>();
  private final Set<String> namedBundles = new HashSet<>();
  private final Map<String, Place> places = new HashMap<>();
  private boolean complete;

  /** A piece, the bundle it is in, and its row. */
  record PieceRow(PackedPiece packed, String bundleId, CsvRow row) {}

  PiecesReader(Problems problems, Ids walls, Ids bundles, Woods woods) {
    this.wood = new WoodCells(woods);
    this.marks = new Ids("piece", problems);
    this.walls = walls;
    this.bundles = bundles;
  }

  /** The sound pieces, in file order. */
  List<PieceRow> read(Optional<SourceFile> file, Values values) {
    complete = file.isPresent() && CsvTable.read(file.get(), REQUIRED, OPTIONAL, values, this::row);
    return rows;
  }

  /** Whether some piece, sound or not, names the bundle; yes if not all rows could be read. */
  boolean names(String bundleId) {
    return !complete || namedBundles.contains(bundleId);
  }

  private void row(CsvRow row) {
    String mark = row.id("mark", marks);
    String wall = row.reference("wall");
    walls.require(wall, row.at("wall"), "name a wall of site.json");
    int course = row.whole("course", Bounds.COURSE);
    int position = row.whole("position", Bounds.POSITION);
    OptionalDouble fromLeftM = row.optional("from_left", Bounds.FROM_LEFT);
    double lengthM = row.quantity("length", Bounds.PIECE_LENGTH);
    double widthM = row.quantity("width", Bounds.SECTION);
    double heightM = row.quantity("height", Bounds.SECTION);
    double fill = row.optional("fill", Bounds.FILL).orElse(1);
    Optional<Species> species = wood.species(row);
    Moisture moisture = moistures.read(row, species);
    OptionalDouble weighedKg = row.optional("mass", Bounds.PIECE_MASS);
    String bundle = bundle(row);
    int layer = row.whole("layer", Bounds.LAYER);
    ownPlace(row, wall, course, position);
    row.finish(
            () ->
                new Piece(
                    mark,
                    wall,
                    course,
                    position,
                    fromLeftM,
                    lengthM,
                    new Section(widthM, heightM, fill),
                    species.orElse(WoodCells.STAND_IN),
                    moisture,
                    weighedKg))
        .ifPresent(piece -> rows.add(new PieceRow(new PackedPiece(piece, layer), bundle, row)));
  }

  private String bundle(CsvRow row) {
    if (row.text("bundle").isEmpty()) {
      row.report(
          "bundle",
          "piece \"" + Quote.shortened(row.text("mark")) + "\" in no bundle",
          "every piece is in a bundle of bundles.csv; a loose piece is a bundle of one",
          "name its bundle");
      return "";
    }
    String bundle = row.reference("bundle");
    namedBundles.add(bundle);
    bundles.require(bundle, row.at("bundle"), "name a bundle of bundles.csv, or add it there");
    return bundle;
  }

  private void ownPlace(CsvRow row, String wall, int course, int position) {
    if (wall.isEmpty() || course < 1 || position < 1) {
      return;
    }
    Place first = places.putIfAbsent(course + " " + position + " " + wall, row.at("position"));
    if (first != null) {
      row.report(
          "position",
          "a second piece at wall " + wall + ", course " + course + ", position " + position,
          "the first is in " + first.words() + ", and each place takes one piece",
          "count positions from the left seen from outside");
    }
  }
}
