package skidway.intake;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import skidway.job.JobTable;

/** Adds the trucks of a list to the job's, with what the person says of them. */
final class LoadRows {
  private final Reading reading;
  private final Trouble trouble;
  private final List<String> notes;

  LoadRows(Reading reading, Trouble trouble, List<String> notes) {
    this.reading = reading;
    this.trouble = trouble;
    this.notes = notes;
  }

  /** The job's loads and those that it did not have yet. */
  JobTable with(List<BundleRows.NewBundle> bundles) {
    JobTable loads = reading.job().loads();
    Set<String> fresh = new LinkedHashSet<>();
    bundles.forEach(b -> fresh.add(b.fields().getOrDefault("load", "")));
    loads.rows().forEach(r -> fresh.remove(loads.cell(r, "load")));
    if (fresh.isEmpty()) {
      return loads;
    }
    if (fresh.size() > 1) {
      trouble.add(
          "loads " + String.join(", ", fresh) + " that loads.csv does not have",
          "every truck has its arrival and its stand there",
          "add them to loads.csv: load,arrival,truck_stand");
      return loads;
    }
    return one(loads, fresh.iterator().next());
  }

  private JobTable one(JobTable loads, String load) {
    List<String> stands = reading.job().truckStands();
    if (reading.wishes().arrival().isEmpty()) {
      trouble.add(
          "load " + Trouble.quote(load) + " that loads.csv does not have",
          "every truck has its arrival there",
          "say --arrival 2031-05-06T08:00, or name another load with --load");
    }
    if (reading.wishes().stand().isEmpty() && stands.size() != 1) {
      trouble.add(
          "load " + Trouble.quote(load) + " without a truck stand",
          stands.isEmpty()
              ? "every truck has a stand of site.json"
              : "the stands are " + String.join(", ", stands),
          "say --stand " + (stands.isEmpty() ? "gate" : stands.get(0)));
    }
    trouble.throwIfAny();
    Map<String, String> row = new LinkedHashMap<>();
    row.put("load", load);
    row.put("arrival", reading.wishes().arrival().orElse(""));
    row.put(
        "truck_stand",
        reading.wishes().stand().orElseGet(() -> stands.isEmpty() ? "" : stands.get(0)));
    notes.add(
        "Load "
            + load
            + " is new: arrives "
            + row.get("arrival")
            + " at "
            + row.get("truck_stand")
            + ".");
    return loads.with(List.of(row));
  }
}
