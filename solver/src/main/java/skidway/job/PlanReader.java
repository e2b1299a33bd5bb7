package skidway.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import skidway.plan.Baseline;
import skidway.plan.Effort;
import skidway.plan.Heeded;
import skidway.plan.Margin;
import skidway.plan.Plan;
import skidway.plan.Proof;
import skidway.plan.Reason;
import skidway.plan.Search;
import skidway.plan.Stack;
import skidway.plan.Step;
import skidway.plan.StepKind;
import skidway.plan.Task;
import skidway.plan.Unplaced;
import skidway.rules.Rule;
import skidway.site.Spot;
import skidway.timber.BearerRow;

/**
 * Reads a plan file, which a person may have edited. Its form is checked here; whether its bundles
 * and spots exist and obey the rules is for the audit to say.
 */
final class PlanReader {
  private static final List<Rule> RULES = List.of(Rule.values());
  private static final List<String> IGNORED =
      Stream.of(Proof.Ignored.values()).map(Words::of).toList();
  private static final List<String> IDS = RULES.stream().map(Rule::id).toList();

  private final Problems problems;
  private final PlanSpots spots;
  private final int numbered;

  /**
   * @param numbered the revision that the file's name says; 0 if it says none
   */
  PlanReader(Problems problems, Task task, int numbered) {
    this.problems = problems;
    this.numbered = numbered;
    this.spots = new PlanSpots(task.site().spots());
  }

  Optional<Plan> plan(Fields f) {
    Format.check(f);
    String jobName = Plain.text(f, "jobName");
    int revision = revision(f);
    String inputs = Plain.text(f, "inputs");
    String previous = Plain.text(f, "previous");
    Heeded heeded = heeded(f);
    Optional<Search> search = f.object("search", "search").flatMap(PlanReader::search);
    List<Stack> stacks = list(f, "stacks", "stack", this::stack);
    List<Spot> waitingPlaces = list(f, "waitingPlaces", "waiting place", spots::spot);
    List<Step> steps = list(f, "steps", "step", PlanReader::step);
    List<Unplaced> unplaced = list(f, "unplaced", "bundle without a spot", this::unplaced);
    List<Reason> reasons = list(f, "reasons", "reason", PlanReader::reason);
    Optional<Proof> proof =
        f.has("proof") ? f.object("proof", "proof").flatMap(PlanReader::proof) : Optional.empty();
    Optional<Effort> effort = f.object("effort", "effort").flatMap(PlanReader::effort);
    List<Baseline> baselines = list(f, "baselines", "baseline", PlanReader::baseline);
    List<Margin> margins = list(f, "margins", "margin", this::margin);
    return f.finishStrictly(
        () ->
            new Plan(
                jobName,
                revision,
                inputs,
                previous,
                search.orElseThrow(),
                stacks,
                waitingPlaces,
                steps,
                reasons,
                unplaced,
                effort.orElseThrow(),
                baselines,
                margins,
                heeded,
                proof));
  }

  /** Tags and pages name the revision, so a plan copied by hand must not pass for its original. */
  private int revision(Fields f) {
    int before = problems.count();
    int revision = Plain.whole(f, "revision", 1);
    if (problems.count() == before && numbered > 0 && revision != numbered) {
      String name = String.format(Locale.ROOT, "%03d.json", numbered);
      f.report(
          f.at("revision"),
          revision + " as \"revision\" in " + name,
          "a plan file is named by its revision: " + name + " holds revision " + numbered,
          "write " + numbered + " if this is a plan of its own; delete it if it is only a copy");
    }
    return revision;
  }

  /** Older plans do not say which events they heed, only how many. */
  private static Heeded heeded(Fields f) {
    int events = f.has("events") ? Plain.whole(f, "events", 0) : 0;
    String check = f.has("eventsCheck") ? Plain.text(f, "eventsCheck") : "";
    return new Heeded(events, check);
  }

  private <T> List<T> list(
      Fields f, String name, String kind, Function<Fields, Optional<T>> reader) {
    return Read.values(
        f.objects(name, 0, FileBounds.MOST_PLAN_ENTRIES, new Ids(kind, problems), reader));
  }

  private static Optional<Search> search(Fields f) {
    long seed = Plain.whole(f, "seed");
    long calculations = Plain.whole(f, "calculations");
    double until = f.has("until") ? Plain.number(f, "until") : 0;
    boolean stopped = f.flag("stopped");
    return f.finishStrictly(() -> new Search(seed, calculations, until, stopped));
  }

  private static Optional<Proof.Ignored> ignored(LocatedNode node) {
    return Stream.of(Proof.Ignored.values())
        .filter(i -> node instanceof LocatedNode.Text text && Words.of(i).equals(text.value()))
        .findFirst();
  }

  private static Optional<Proof> proof(Fields f) {
    double lowestS = Plain.number(f, "lowestPersonS");
    double countedS = Plain.number(f, "countedPersonS");
    List<Proof.Ignored> ignored = new ArrayList<>();
    for (LocatedNode node : f.items("ignored", 0, IGNORED.size())) {
      Optional<Proof.Ignored> which = ignored(node);
      which.ifPresent(ignored::add);
      if (which.isEmpty()) {
        f.report(
            node.place(), node.words(), "allowed are " + String.join(", ", IGNORED), "correct it");
      }
    }
    if (!(lowestS > 0 && countedS >= lowestS) && f.has("lowestPersonS")) {
      f.report(
          f.at("lowestPersonS"),
          "lowest " + lowestS + " and counted " + countedS,
          "no plan takes less than the lowest, and that is more than 0",
          "delete \"proof\"; stage again to have one");
    }
    return f.finishStrictly(() -> new Proof(lowestS, countedS, ignored));
  }

  private Optional<Stack> stack(Fields f) {
    Optional<Spot> spot = spots.ofStack(f);
    List<String> tiers = IdLists.ids(f, "tiers", 0);
    return f.finishStrictly(() -> new Stack(spot.orElseThrow(), tiers));
  }

  private static Optional<Step> step(Fields f) {
    int number = Plain.whole(f, "number", 1);
    StepKind kind = f.choice("kind", StepKind.PLACE);
    String bundle = f.reference("bundle");
    String from = f.reference("from");
    String to = f.reference("to");
    int tier = Plain.whole(f, "tier", 0);
    boolean byHand = Stream.of("stand", "pickStand", "reachM", "capacityKg").noneMatch(f::has);
    String stand = byHand ? "" : f.reference("stand");
    String pickStand = f.has("pickStand") ? f.reference("pickStand") : "";
    double reachM = byHand ? 0 : Plain.number(f, "reachM");
    double massKg = Plain.number(f, "massKg");
    double capacityKg = byHand ? 0 : Plain.number(f, "capacityKg");
    Optional<BearerRow> bearers =
        f.has("bearers")
            ? f.object("bearers", "row of bearers").flatMap(PlanReader::bearers)
            : Optional.of(BearerRow.NONE);
    return f.finishStrictly(
        () ->
            new Step(
                number,
                kind,
                bundle,
                from,
                to,
                tier,
                stand,
                reachM,
                massKg,
                capacityKg,
                bearers.orElseThrow(),
                pickStand));
  }

  private static Optional<BearerRow> bearers(Fields f) {
    return f.finishStrictly(PlanFields.bearers(f));
  }

  private Optional<Unplaced> unplaced(Fields f) {
    String bundle = f.reference("bundle");
    Rule rule = rule(f);
    String sentence = Plain.text(f, "sentence");
    return f.finishStrictly(() -> new Unplaced(bundle, rule, sentence));
  }

  private static Optional<Reason> reason(Fields f) {
    String bundle = f.reference("bundle");
    String spot = f.reference("spot");
    double costPersonS = Plain.number(f, "costPersonS");
    String nextBest = Plain.text(f, "nextBestSpot");
    OptionalDouble nextBestPersonS =
        f.has("nextBestPersonS")
            ? OptionalDouble.of(Plain.number(f, "nextBestPersonS"))
            : OptionalDouble.empty();
    List<String> sentences = new ArrayList<>();
    for (LocatedNode node : f.items("sentences", 0, FileBounds.MOST_PLAN_ENTRIES)) {
      if (node instanceof LocatedNode.Text text) {
        sentences.add(text.value());
      } else {
        f.report(node.place(), node.words(), "a sentence is a text in quotes", "correct it");
      }
    }
    return f.finishStrictly(
        () -> new Reason(bundle, spot, costPersonS, nextBest, nextBestPersonS, sentences));
  }

  private static Optional<Effort> effort(Fields f) {
    double carryS = Plain.number(f, "carryS");
    double pickS = Plain.number(f, "pickS");
    double rehandleS = Plain.number(f, "rehandleS");
    OptionalDouble insideS =
        f.has("insideS") ? OptionalDouble.of(Plain.number(f, "insideS")) : OptionalDouble.empty();
    double setDownS = Plain.number(f, "setDownS");
    double machineS = Plain.number(f, "machineS");
    double moveS = f.has("moveS") ? Plain.number(f, "moveS") : 0;
    double offTruckS = f.has("offTruckS") ? Plain.number(f, "offTruckS") : 0;
    return f.finishStrictly(
        () -> new Effort(carryS, pickS, rehandleS, insideS, setDownS, machineS, moveS, offTruckS));
  }

  private static Optional<Baseline> baseline(Fields f) {
    String name = Plain.text(f, "name");
    String sentence = Plain.text(f, "sentence");
    int placed = Plain.whole(f, "placed", 0);
    Optional<Effort> effort = f.object("effort", "effort").flatMap(PlanReader::effort);
    return f.finishStrictly(() -> new Baseline(name, sentence, placed, effort.orElseThrow()));
  }

  private Optional<Margin> margin(Fields f) {
    Rule rule = rule(f);
    String where = Plain.text(f, "where");
    double value = Plain.number(f, "value");
    double limit = Plain.number(f, "limit");
    f.has("unit");
    boolean atLeast = f.flag("atLeast");
    return f.finishStrictly(() -> new Margin(rule, where, value, limit, atLeast));
  }

  private static Rule rule(Fields f) {
    return RULES.get(f.choice("rule", IDS));
  }
}
