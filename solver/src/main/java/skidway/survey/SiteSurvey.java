package skidway.survey;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import skidway.job.Problem;
import skidway.job.SiteFile;
import skidway.plan.Task;
import skidway.timber.Delivery;
import skidway.units.Figures;

/**
 * A site that was told in words, read and found sound, and not yet written.
 *
 * @param task the site with nothing delivered, to draw it
 * @param notes what was worked out and what was kept, for whoever told it
 * @param checks measures that show on the ground whether it is right
 * @param remarks what is odd but does not stop it
 */
public record SiteSurvey(
    Task task,
    List<String> notes,
    List<String> checks,
    List<Problem> remarks,
    SiteFile file,
    SiteFile.Checked checked) {
  /** What a description is called unless it is named. */
  public static final String FILE = "site.txt";

  /**
   * Reads a description.
   *
   * @param replace whether what was added to {@code site.json} by hand is given up
   * @throws skidway.job.BadInput with everything that is wrong
   */
  public static SiteSurvey read(Path folder, Path description, boolean replace) {
    SiteFile file = SiteFile.of(folder);
    Optional<SiteText.Told> told =
        file.description(description)
            .flatMap(s -> SiteText.read(s, file.units(), file::drawing, file.problems()));
    file.throwIfAny();
    SiteText.Told site = told.orElseThrow();
    SiteFile.Checked checked = file.check(site.site(), site.units(), replace);
    Task task =
        new Task(
            file.jobName().orElse(checked.site().name()),
            checked.site(),
            new Delivery(List.of(), List.of()),
            file.settings(),
            new Figures(site.units()));
    List<String> notes = new ArrayList<>(site.notes());
    notes.addAll(checked.kept());
    return new SiteSurvey(task, notes, site.checks(), file.remarks(), file, checked);
  }

  /**
   * Writes {@code site.json}.
   *
   * @throws skidway.job.NotWritten if the disk refuses
   */
  public Path write() {
    return file.write(checked);
  }
}
