package skidway.job;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import skidway.plan.Brought;
import skidway.plan.PieceHours;
import skidway.plan.PileTrip;
import skidway.plan.Plan;
import skidway.plan.Stack;
import skidway.plan.TimberPile;
import skidway.plan.Wave;
import skidway.plan.WavePlan;
import skidway.plan.Way;
import skidway.site.Spot;
import skidway.site.SpotKind;
import skidway.timber.BearerRow;

/**
 * Reads the waves of a plan, which a person may have edited. Their form is checked here, and that
 * they belong to the plan; whether their pieces exist and their piles may stand is for the audit.
 */
final class WaveReader {
  private final Problems problems;
  private final PlanMark plan;
  private final Ids piles;

  /** Codes that piles must not have. */
  private final Set<String> taken = new HashSet<>();

  private int wavesRead;

  /**
   * @param plan that the waves must have been made for
   * @param mark of that plan
   */
  WaveReader(Problems problems, Plan plan, PlanMark mark) {
    this.problems = problems;
    this.plan = mark;
    piles = new Ids("pile", problems);
    for (Stack stack : plan.stacks()) {
      taken.add(stack.spot().id());
      taken.addAll(stack.bundleIds());
    }
  }

  Optional<WavePlan> waves(Fields f) {
    Format.check(f);
    String jobName = Plain.text(f, "jobName");
    int revision = Plain.whole(f, "revision", 1);
    String of = Plain.text(f, "plan");
    if (f.sound()) {
      belongs(f, revision, of);
    }
    List<Wave> waves =
        Read.values(
            f.objects(
                "waves", 0, FileBounds.MOST_PLAN_ENTRIES, new Ids("wave", problems), this::wave));
    Optional<PieceHours> straight = hours(f, "straight");
    Optional<PieceHours> hours = hours(f, "hours");
    return f.finish(
        () ->
            new WavePlan(
                jobName, revision, of, waves, straight.orElseThrow(), hours.orElseThrow()));
  }

  /** Piles by a plan that was changed since may stand where bundles stand now. */
  private void belongs(Fields f, int revision, String of) {
    String allowed =
        "beside this plan belong the waves of revision "
            + plan.revision()
            + " as its file is now, "
            + PlanMark.brief(plan.fingerprint());
    String wayOut = "plan the waves of this plan anew with 'skidway waves', or delete the file";
    if (revision != plan.revision()) {
      f.report(f.at("revision"), "waves of revision " + revision, allowed, wayOut);
    } else if (!of.equals(plan.fingerprint())) {
      f.report(f.at("plan"), "waves of another plan, " + PlanMark.brief(of), allowed, wayOut);
    }
  }

  private Optional<Wave> wave(Fields f) {
    wavesRead++;
    int number = Plain.whole(f, "number", 1);
    if (f.sound() && number != wavesRead) {
      f.report(
          f.at("number"),
          number + " as \"number\"",
          "waves are numbered from 1 in the order in which they come; this one is " + wavesRead,
          "write " + wavesRead + ", or put the wave where it belongs");
    }
    int laidBefore = Plain.whole(f, "laidBefore", 0);
    int laidAfter = Plain.whole(f, "laidAfter", 0);
    int fromCourse = course(f, "fromCourse");
    int toCourse = course(f, "toCourse");
    List<TimberPile> itsPiles =
        Read.values(f.objects("piles", 0, FileBounds.MOST_THINGS, piles, this::pile));
    List<Brought> brought =
        Read.values(
            f.objects(
                "brought",
                0,
                FileBounds.MOST_PLAN_ENTRIES,
                new Ids("piece to bring", problems),
                WaveReader::brought));
    List<PileTrip> trips =
        Read.values(
            f.objects(
                "trips",
                0,
                FileBounds.MOST_PLAN_ENTRIES,
                new Ids("trip", problems),
                WaveReader::trip));
    Optional<PieceHours> hours = hours(f, "hours");
    return f.finish(
        () ->
            new Wave(
                number,
                laidBefore,
                laidAfter,
                fromCourse,
                toCourse,
                itsPiles,
                brought,
                trips,
                hours.orElseThrow()));
  }

  private static int course(Fields f, String name) {
    return Plain.whole(f, name, 1, (int) Bounds.COURSE.range().most());
  }

  private Optional<TimberPile> pile(Fields f) {
    Optional<Spot> spot = spot(f);
    List<List<String>> layers = IdLists.layers(f, "layers");
    double heightM = Plain.number(f, "heightM");
    double massKg = Plain.number(f, "massKg");
    Optional<BearerRow> bearers =
        f.object("bearers", "row of bearers").flatMap(row -> row.finish(PlanFields.bearers(row)));
    return f.finish(
        () -> new TimberPile(spot.orElseThrow(), layers, heightM, massKg, bearers.orElseThrow()));
  }

  private Optional<Spot> spot(Fields f) {
    String id = f.id(piles);
    if (taken.contains(id)) {
      f.report(
          f.at("id"),
          "a pile \"" + id + '"',
          "the plan has a stack or a bundle of that name",
          "give the pile a name of its own, wherever it stands in this file");
    }
    Supplier<Spot> spot = PlanFields.spot(f, id, SpotKind.STACK);
    return f.sound() ? Optional.of(spot.get()) : Optional.empty();
  }

  private static Optional<Brought> brought(Fields f) {
    String mark = f.reference("mark");
    String bundle = f.reference("bundle");
    String from = f.reference("from");
    String to = f.reference("to");
    Way way = f.choice("way", Way.BY_HAND);
    int people = Plain.whole(f, "people", 1);
    return f.finish(() -> new Brought(mark, bundle, from, to, way, people));
  }

  private static Optional<PileTrip> trip(Fields f) {
    String bundle = f.reference("bundle");
    String from = f.reference("from");
    String to = f.reference("to");
    List<String> marks = IdLists.ids(f, "marks", 1);
    String pickStand = f.reference("pickStand");
    String stand = f.reference("stand");
    double reachM = Plain.number(f, "reachM");
    double massKg = Plain.number(f, "massKg");
    double capacityKg = Plain.number(f, "capacityKg");
    return f.finish(
        () -> new PileTrip(bundle, from, to, marks, pickStand, stand, reachM, massKg, capacityKg));
  }

  private static Optional<PieceHours> hours(Fields owner, String name) {
    return owner.object(name, "sum of hours").flatMap(WaveReader::hours);
  }

  private static Optional<PieceHours> hours(Fields f) {
    double bringS = Plain.number(f, "bringS");
    double layS = Plain.number(f, "layS");
    double carryS = Plain.number(f, "carryS");
    double pickS = Plain.number(f, "pickS");
    double asideS = Plain.number(f, "asideS");
    double machineS = Plain.number(f, "machineS");
    return f.finish(() -> new PieceHours(bringS, layS, carryS, pickS, asideS, machineS));
  }
}
