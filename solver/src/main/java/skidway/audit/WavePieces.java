package skidway.audit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import skidway.erection.Placement;
import skidway.plan.Brought;
import skidway.plan.Plan;
import skidway.plan.Stack;
import skidway.plan.Task;
import skidway.plan.TimberPile;
import skidway.plan.Wave;
import skidway.plan.WavePlan;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.timber.Bundle;
import skidway.timber.Piece;

/**
 * Follows every piece that waves name from its bundle over its pile to its wall: it is there when
 * it is brought, lies in one pile, is laid before the wave ends, has nothing beneath it that is
 * needed sooner, and is borne by what is beneath.
 */
final class WavePieces {
  private static final double ROUNDING_M = 1e-6;

  private final Task task;
  private final Ledger ledger;
  private final ToldMass told;
  private final WaveTrips trips;
  private final OnSite onSite;
  private final Map<String, Integer> pull = new HashMap<>();
  private final Map<String, Piece> pieces = new HashMap<>();
  private final Map<String, Bundle> bundleOf = new HashMap<>();
  private final Map<String, String> spotOf = new HashMap<>();

  WavePieces(Task task, Plan plan) {
    this.task = task;
    ledger = new Ledger(task.figures());
    told = new ToldMass(ledger, task.figures());
    trips = new WaveTrips(task, plan, ledger, told, this::massKg);
    onSite = OnSite.of(task);
    for (Placement placement : task.pullOrder().placements()) {
      pull.put(placement.piece().mark(), pull.size());
    }
    for (Bundle bundle : task.delivery().bundles()) {
      for (Piece piece : bundle.pieces()) {
        pieces.put(piece.mark(), piece);
        bundleOf.put(piece.mark(), bundle);
      }
    }
    for (Stack stack : plan.stacks()) {
      stack.bundleIds().forEach(id -> spotOf.put(id, stack.spot().id()));
    }
  }

  List<Finding> findings(WavePlan waves) {
    Set<String> gone = new HashSet<>();
    int laid = 0;
    for (Wave wave : waves.waves()) {
      if (wave.laidBefore() < laid) {
        broken(
            Rule.STEPS_BUILD,
            "wave " + wave.number(),
            "Wave " + wave.number() + " comes before the one before it is used up.");
      }
      laid = wave.laidAfter();
      wave.brought().forEach(brought -> known(wave, brought, gone));
      wave.piles().forEach(pile -> pile(wave, pile));
      piledOnce(wave);
      trips.check(wave);
    }
    return ledger.findings();
  }

  private void known(Wave wave, Brought brought, Set<String> gone) {
    String mark = brought.mark();
    Integer turn = pull.get(mark);
    Bundle bundle = bundleOf.get(mark);
    if (turn == null || bundle == null || !bundle.id().equals(brought.bundleId())) {
      broken(Rule.KNOWN, mark, "No piece " + mark + " lies in bundle " + brought.bundleId() + ".");
      return;
    }
    if (!brought.fromSpotId().equals(spotOf.get(bundle.id()))) {
      broken(
          Rule.KNOWN,
          mark,
          mark + " is fetched from " + brought.fromSpotId() + ", where its bundle does not lie.");
    }
    if (!gone.add(mark)) {
      broken(Rule.ONCE, mark, mark + " is brought twice.");
    }
    if (turn < wave.laidBefore() || turn >= wave.laidAfter()) {
      broken(
          Rule.STEPS_BUILD,
          mark,
          mark + " is brought in wave " + wave.number() + " but is not laid from it.");
    }
    if (onSite.comesAfter(bundle) > wave.laidBefore()) {
      broken(
          Rule.STEPS_BUILD,
          mark,
          mark + " is brought in wave " + wave.number() + ", before its load comes.");
    }
  }

  private void pile(Wave wave, TimberPile pile) {
    if (task.site().zone(pile.spot().zoneId()).isEmpty() || !Soundness.sound(pile.spot())) {
      broken(
          Rule.KNOWN, pile.id(), "Pile " + pile.id() + " stands on no deck or yard of the site.");
    }
    List<Piece> beneath = new ArrayList<>();
    double heightM = task.settings().get(Setting.BEARER_HEIGHT);
    for (int i = 0; i < pile.layers().size(); i++) {
      List<Piece> layer =
          pile.layers().get(i).stream()
              .flatMap(mark -> Optional.ofNullable(pieces.get(mark)).stream())
              .toList();
      double widthM = layer.stream().mapToDouble(p -> p.section().widthM()).sum();
      ledger.most(
          Rule.FITS_SPOT,
          pile.id(),
          widthM,
          pile.spot().footprint().widthM() + ROUNDING_M,
          width -> "A layer of pile " + pile.id() + " is " + width + " wide");
      layer.forEach(upper -> lies(pile, upper, beneath));
      heightM += layer.stream().mapToDouble(p -> p.section().heightM()).max().orElse(0);
      heightM += i == 0 ? 0 : task.settings().get(Setting.STICKER_HEIGHT);
      beneath.addAll(layer);
    }
    if (Math.abs(heightM - pile.heightM()) > Ledger.LENGTH_TOLERANCE_M) {
      broken(
          Rule.STACK_HEIGHT,
          pile.id(),
          "Pile "
              + pile.id()
              + " is told to be "
              + task.figures().length(pile.heightM())
              + " high, the audit finds "
              + task.figures().length(heightM)
              + ".");
    }
    told.atMost(
        Rule.SPOT_MASS,
        pile.id(),
        "Pile " + pile.id() + " is told to weigh at most ",
        pile.massKg(),
        massKg(pile.marks()));
    for (String mark : pile.marks()) {
      if (wave.brought().stream()
          .noneMatch(b -> b.mark().equals(mark) && b.pileId().equals(pile.id()))) {
        broken(Rule.ONCE, mark, mark + " lies in pile " + pile.id() + " but is not brought there.");
      }
    }
  }

  private void lies(TimberPile pile, Piece upper, List<Piece> beneath) {
    ledger.most(
        Rule.FITS_SPOT,
        pile.id(),
        upper.lengthM(),
        pile.spot().footprint().lengthM() + ROUNDING_M,
        length -> upper.mark() + " in pile " + pile.id() + " is " + length + " long");
    for (Piece lower : beneath) {
      if (pull.getOrDefault(lower.mark(), 0) < pull.getOrDefault(upper.mark(), 0)) {
        broken(
            Rule.REHANDLE,
            pile.id(),
            lower.mark() + " lies under " + upper.mark() + ", which is needed later.");
      }
      double overM = Math.max(0, (upper.lengthM() - lower.lengthM()) / 2);
      ledger.most(
          Rule.TIER_SUPPORT,
          pile.id(),
          overM,
          task.settings().get(Setting.END_OVERHANG),
          over -> upper.mark() + " reaches " + over + " beyond " + lower.mark() + " beneath it");
    }
  }

  /** Whatever is brought to a pile lies in it, and only there. */
  private void piledOnce(Wave wave) {
    Map<String, Integer> count = new HashMap<>();
    wave.piles().forEach(pile -> pile.marks().forEach(mark -> count.merge(mark, 1, Integer::sum)));
    for (Brought brought : wave.brought()) {
      int times = count.getOrDefault(brought.mark(), 0);
      if (times != 1) {
        broken(
            Rule.ONCE,
            brought.mark(),
            brought.mark() + " is brought to a pile and lies in " + times + " layers.");
      }
    }
  }

  private double massKg(List<String> marks) {
    return marks.stream()
        .flatMap(mark -> Optional.ofNullable(pieces.get(mark)).stream())
        .mapToDouble(piece -> piece.mass().highKg())
        .sum();
  }

  private void broken(Rule rule, String where, String sentence) {
    ledger.broken(rule, where, 1, 0, sentence);
  }
}
