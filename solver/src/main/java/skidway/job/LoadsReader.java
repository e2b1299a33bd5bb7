package skidway.job;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import skidway.timber.Load;

/** Reads {@code loads.csv}: one truck a row. */
final class LoadsReader {
  static final String FILE = "loads.csv";
  static final List<String> REQUIRED = List.of("load", "arrival", "truck_stand");
  static final List<String> OPTIONAL = List.of();

  private final Ids loadIds;
  private final Ids truckStands;
  private final List<Load> loads = new ArrayList<>();

  LoadsReader(Ids loadIds, Ids truckStands) {
    this.loadIds = loadIds;
    this.truckStands = truckStands;
  }

  List<Load> read(Optional<SourceFile> file, Values values) {
    if (file.isEmpty() || !CsvTable.read(file.get(), REQUIRED, OPTIONAL, values, this::row)) {
      loadIds.incomplete();
    }
    return loads;
  }

  private void row(CsvRow row) {
    String id = row.id("load", loadIds);
    Optional<LocalDateTime> arrival = arrival(row);
    String stand = row.reference("truck_stand");
    truckStands.require(stand, row.at("truck_stand"), "name a truck stand of site.json");
    row.finish(() -> new Load(id, arrival.orElseThrow(), stand)).ifPresent(loads::add);
  }

  private static Optional<LocalDateTime> arrival(CsvRow row) {
    Optional<LocalDateTime> arrival = Dates.moment(row.text("arrival"));
    if (arrival.isEmpty()) {
      row.report(
          "arrival",
          Quote.found(row.text("arrival")) + " as arrival",
          "an arrival is a date and time of day such as 2031-05-05T08:00, " + Dates.YEARS,
          "write it like that");
    }
    return arrival;
  }
}
