package skidway.job;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import skidway.timber.GravityBasis;
import skidway.timber.Species;
import skidway.timber.SpeciesTable;
import skidway.timber.SpecificGravity;

/** Reads the woods of a job's own, which the handbook's table does not have. */
final class WoodsReader {
  private static final List<String> BASES = List.of("green", "12 %", "oven-dry");

  /** What these words mean, in their order. */
  private static final List<GravityBasis> MEANT =
      List.of(GravityBasis.GREEN_VOLUME, GravityBasis.AIR_DRY_VOLUME, GravityBasis.OVEN_DRY_VOLUME);

  private final Map<String, Species> own = new LinkedHashMap<>();

  private WoodsReader() {}

  static Woods read(Fields job, Problems problems) {
    WoodsReader reader = new WoodsReader();
    int before = problems.count();
    job.optionalObjects("woods", new Ids("wood", problems), reader::wood);
    return new Woods(reader.own, problems.count() == before);
  }

  private Optional<Species> wood(Fields f) {
    String name = f.reference("name");
    double gravity = f.quantity("gravity", Bounds.GRAVITY);
    GravityBasis basis = MEANT.get(f.choice("basis", BASES));
    double spread = f.optional("spread", Bounds.SPREAD).orElse(SpeciesTable.SPREAD_SHARE);
    if (f.sound()) {
      ownName(name, f);
    }
    Optional<Species> wood =
        f.finish(
            () ->
                new Species(
                    name,
                    new SpecificGravity(gravity, basis),
                    OptionalDouble.empty(),
                    Optional.empty(),
                    spread));
    wood.ifPresent(w -> own.put(Woods.key(name), w));
    return wood;
  }

  /** Two woods of one name would be mistaken for each other in the packing list. */
  private void ownName(String name, Fields f) {
    Optional<String> handbook = SpeciesTable.find(name).map(Species::name);
    if (handbook.isPresent()) {
      f.report(
          f.at("name"),
          "a wood named like \"" + handbook.get() + "\" of the handbook",
          "a wood of the job's own has a name of its own",
          "name it otherwise, such as \""
              + handbook.get()
              + " of our mill 1\", here and in pieces.csv");
    } else if (Woods.key(name).isEmpty() || own.containsKey(Woods.key(name))) {
      f.report(
          f.at("name"),
          own.containsKey(Woods.key(name))
              ? "a second wood \"" + name + '"'
              : "a wood without a letter in its name",
          "names are told apart by their letters and figures",
          "give it another name");
    }
  }
}
