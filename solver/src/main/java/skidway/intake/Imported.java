package skidway.intake;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import skidway.job.JobDraft;
import skidway.job.Problem;

/**
 * A list read and judged, ready to be written.
 *
 * @param notes what was assumed or worked out, a sentence each
 * @param weights how the list's weights compare with computed ones
 * @param loadsWereThere whether the job has timbers of the loads already
 * @param gone bundles and marks that the job has and the list takes away
 * @param differences from what it has, a line a timber
 * @param mayReplace whether the person said that they may be replaced
 * @param jobLacks what else is wrong with the job
 */
public record Imported(
    JobDraft job,
    Map<String, String> texts,
    List<String> loads,
    int bundles,
    int pieces,
    List<String> notes,
    List<String> weights,
    boolean loadsWereThere,
    Set<String> gone,
    List<String> differences,
    boolean mayReplace,
    List<Problem> jobLacks) {
  public Imported {
    loads = List.copyOf(loads);
    notes = List.copyOf(notes);
    weights = List.copyOf(weights);
    gone = Collections.unmodifiableSet(new LinkedHashSet<>(gone));
    differences = List.copyOf(differences);
    jobLacks = List.copyOf(jobLacks);
  }

  /** Whether the list says nothing that the job does not have already. */
  public boolean nothingNew() {
    return loadsWereThere && differences.isEmpty();
  }

  /** Whether writing would replace what the job has, and nobody said that it may. */
  public boolean needsReplace() {
    return loadsWereThere && !differences.isEmpty() && !mayReplace;
  }

  /**
   * Writes the job's tables, all or none.
   *
   * @return the names of the files that changed
   * @throws skidway.job.NotWritten if that cannot be done
   */
  public List<String> write() {
    if (needsReplace()) {
      throw new IllegalStateException("Nobody said that the load may be replaced.");
    }
    return job.write(texts);
  }
}
