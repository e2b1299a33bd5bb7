package skidway.plan;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import skidway.site.Spot;

/**
 * The answer: one revision of a staging plan, complete enough to be carried out and audited without
 * anything but the job's inputs.
 *
 * @param revision 1, 2, …; a revision is never overwritten
 * @param inputs fingerprint of the job's input files
 * @param previous fingerprint of the revision before, or an empty text
 * @param steps by their numbers, in whatever order they were written
 * @param waitingPlaces where bundles are set down on the way
 * @param heeded which recorded events of the job it heeds
 * @param proof how near it is to the best possible, if anything is proven
 */
public record Plan(
    String jobName,
    int revision,
    String inputs,
    String previous,
    Search search,
    List<Stack> stacks,
    List<Spot> waitingPlaces,
    List<Step> steps,
    List<Reason> reasons,
    List<Unplaced> unplaced,
    Effort effort,
    List<Baseline> baselines,
    List<Margin> margins,
    Heeded heeded,
    Optional<Proof> proof) {
  public Plan {
    stacks = List.copyOf(stacks);
    waitingPlaces = List.copyOf(waitingPlaces);
    steps = steps.stream().sorted(Comparator.comparingInt(Step::number)).toList();
    reasons = List.copyOf(reasons);
    unplaced = List.copyOf(unplaced);
    baselines = List.copyOf(baselines);
    margins = List.copyOf(margins);
  }

  /** A plan that heeds no events and of which nothing is proven. */
  public Plan(
      String jobName,
      int revision,
      String inputs,
      String previous,
      Search search,
      List<Stack> stacks,
      List<Spot> waitingPlaces,
      List<Step> steps,
      List<Reason> reasons,
      List<Unplaced> unplaced,
      Effort effort,
      List<Baseline> baselines,
      List<Margin> margins) {
    this(
        jobName,
        revision,
        inputs,
        previous,
        search,
        stacks,
        waitingPlaces,
        steps,
        reasons,
        unplaced,
        effort,
        baselines,
        margins,
        Heeded.NONE,
        Optional.empty());
  }

  /** A plan of which nothing is proven. */
  public Plan(
      String jobName,
      int revision,
      String inputs,
      String previous,
      Search search,
      List<Stack> stacks,
      List<Spot> waitingPlaces,
      List<Step> steps,
      List<Reason> reasons,
      List<Unplaced> unplaced,
      Effort effort,
      List<Baseline> baselines,
      List<Margin> margins,
      Heeded heeded) {
    this(
        jobName,
        revision,
        inputs,
        previous,
        search,
        stacks,
        waitingPlaces,
        steps,
        reasons,
        unplaced,
        effort,
        baselines,
        margins,
        heeded,
        Optional.empty());
  }

  /** How many recorded events it heeds; the first so many of the job. */
  public int events() {
    return heeded.events();
  }

  /** Every spot that it has stacks on, then every waiting place. */
  public List<Spot> spots() {
    return Stream.concat(stacks.stream().map(Stack::spot), waitingPlaces.stream()).toList();
  }

  /** The same plan as a revision of a job, made when these events were recorded. */
  public Plan labelled(int newRevision, String newInputs, String newPrevious, Heeded newHeeded) {
    return new Plan(
        jobName,
        newRevision,
        newInputs,
        newPrevious,
        search,
        stacks,
        waitingPlaces,
        steps,
        reasons,
        unplaced,
        effort,
        baselines,
        margins,
        newHeeded,
        proof);
  }

  /**
   * What of it can be looked at when only these stacks stand: no steps, nothing said about them.
   */
  public Plan standing(List<Stack> only) {
    return new Plan(
        jobName, revision, inputs, previous, search, only, List.of(), List.of(), List.of(),
        List.of(), effort, List.of(), List.of(), heeded);
  }

  /** The same plan with the margins an audit found. */
  public Plan withMargins(List<Margin> newMargins) {
    return new Plan(
        jobName,
        revision,
        inputs,
        previous,
        search,
        stacks,
        waitingPlaces,
        steps,
        reasons,
        unplaced,
        effort,
        baselines,
        newMargins,
        heeded,
        proof);
  }

  /** The same plan with what is proven of it. */
  public Plan withProof(Optional<Proof> newProof) {
    return new Plan(
        jobName,
        revision,
        inputs,
        previous,
        search,
        stacks,
        waitingPlaces,
        steps,
        reasons,
        unplaced,
        effort,
        baselines,
        margins,
        heeded,
        newProof);
  }
}
