package skidway.audit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import skidway.audit.walk.CarryWalks;
import skidway.erection.Placement;
import skidway.erection.PullOrder;
import skidway.plan.Brought;
import skidway.plan.PieceHours;
import skidway.plan.PileTrip;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.plan.TimberPile;
import skidway.plan.Wave;
import skidway.plan.Way;
import skidway.rules.Setting;
import skidway.site.MachineStand;
import skidway.site.Point;
import skidway.site.Spot;
import skidway.timber.Piece;

/**
 * Works out the crew time of waves from what they state, piece by piece: taking pieces out of their
 * bundles, bringing them to piles, laying them there and carrying them to the walls. Walks are the
 * audit's own. What nobody gets to takes infinitely long.
 */
final class WaveHours {
  private final Scene scene;
  private final List<Placement> order;
  private final CarryWalks walks;
  private final Handling handling;
  private final HandUnloading hands;
  private final Carrying carrying;
  private final MovedAside aside;
  private final Picking picking;
  private final Beneath beneath;

  /** How each piece is drawn from its bundle. */
  private final Map<String, Pick> picks = new HashMap<>();

  private final Map<Walk, Double> knownM = new HashMap<>();

  /** From one place to another when so many pieces are laid. */
  private record Walk(Point from, Point to, int laid) {}

  WaveHours(Task task, Plan plan) {
    scene = new Scene(task, plan, OnSite.of(task));
    PullOrder pullOrder = task.pullOrder();
    order = pullOrder.placements();
    walks = new CarryWalks(task, pullOrder);
    handling = new Handling(scene, pullOrder);
    hands = new HandUnloading(scene, walks);
    carrying = new Carrying(scene, walks, handling);
    aside = new MovedAside(scene, pullOrder);
    picking = new Picking(scene);
    picking.picks().forEach(pick -> picks.put(pick.piece().mark(), pick));
    beneath = new Beneath(scene, pullOrder);
  }

  /** What bundles take whatever becomes of their pieces: unloading, moves, and filling racks. */
  private PieceHours bundles() {
    double machineS = handling.machineS() + handling.setDownS() + handling.moveS();
    return new PieceHours(0, aside.rackedS(), 0, 0, 0, machineS + hands.personS());
  }

  /** Everything, if every piece is pulled straight from its bundle. */
  PieceHours straight() {
    return atBundles(0, order.size(), Set.of()).plus(bundles());
  }

  /** Whatever comes before, between and after these waves. */
  PieceHours outside(List<Wave> waves) {
    PieceHours sum = bundles();
    int laid = 0;
    for (Wave wave : waves) {
      sum = sum.plus(atBundles(laid, wave.laidBefore(), Set.of()));
      laid = wave.laidAfter();
    }
    return sum.plus(atBundles(laid, order.size(), Set.of()));
  }

  /** Bringing a wave in and laying all that is laid before the next one. */
  PieceHours of(Wave wave) {
    Set<String> brought = new HashSet<>();
    wave.brought().forEach(b -> brought.add(b.mark()));
    PieceHours sum = atBundles(wave.laidBefore(), wave.laidAfter(), brought);
    for (Brought one : wave.brought()) {
      sum = sum.plus(broughtTo(wave, one));
    }
    for (TimberPile pile : wave.piles()) {
      sum = sum.plus(fromPile(pile));
    }
    for (PileTrip trip : wave.trips()) {
      double machineS = handling.liftS(stand(trip.pickStandId()), stand(trip.standId()));
      sum = sum.plus(new PieceHours(0, 0, 0, 0, 0, machineS));
    }
    return sum;
  }

  /** Picked, moved aside, and carried to the wall unless it is brought to a pile. */
  private PieceHours atBundles(int from, int to, Set<String> brought) {
    double carryS = 0;
    double pickS = 0;
    double asideS = 0;
    for (int i = Math.max(0, from); i < Math.min(to, order.size()); i++) {
      Piece piece = order.get(i).piece();
      Pick pick = picks.get(piece.mark());
      if (pick != null) {
        carryS += brought.contains(piece.mark()) ? 0 : carrying.personS(piece);
        pickS += picking.personS(pick);
        boolean uncovered = beneath.isUncovered(piece.mark(), from, brought);
        asideS += uncovered ? scene.setting(Setting.REHANDLE_PIECE) : 0;
      }
    }
    return new PieceHours(0, 0, carryS, pickS, asideS, 0);
  }

  /** Laid straight on its pile, or first on the machine's load. */
  private PieceHours broughtTo(Wave wave, Brought one) {
    boolean byHand = one.way() == Way.BY_HAND;
    double layS = (byHand ? 1 : 2) * scene.setting(Setting.LAY_PIECE);
    return new PieceHours(byHand ? bringS(wave, one) : 0, layS, 0, 0, 0, 0);
  }

  /** What lies nowhere, or goes nowhere, takes no time; that it does is told elsewhere. */
  private double bringS(Wave wave, Brought one) {
    Optional<Pick> pick = Optional.ofNullable(picks.get(one.mark()));
    Optional<Point> from = pick.flatMap(p -> scene.spot(p.spotId())).map(Spot::access);
    Optional<Point> to =
        wave.piles().stream()
            .filter(pile -> pile.id().equals(one.pileId()))
            .map(TimberPile::spot)
            .filter(Soundness::sound)
            .map(Spot::access)
            .findFirst();
    if (from.isEmpty() || to.isEmpty()) {
      return 0;
    }
    int laid = Math.max(0, Math.min(wave.laidBefore(), order.size()));
    Walk way = new Walk(from.get(), to.get(), laid);
    double metres = knownM.computeIfAbsent(way, w -> walks.metres(w.from(), w.to(), w.laid()));
    return carrying.personS(pick.orElseThrow().piece(), metres);
  }

  /** Set up, and every piece picked from its layer and carried to its wall. */
  private PieceHours fromPile(TimberPile pile) {
    List<Piece> pieces = new ArrayList<>();
    double pickS = 0;
    double undersideM = scene.setting(Setting.BEARER_HEIGHT);
    for (List<String> layer : pile.layers()) {
      double thickM = 0;
      for (String mark : layer) {
        Pick pick = picks.get(mark);
        if (pick != null) {
          Piece piece = pick.piece();
          double middleM = undersideM + piece.section().heightM() / 2;
          pickS += picking.personS(new Pick(piece, pile.id(), middleM, false));
          thickM = Math.max(thickM, piece.section().heightM());
          pieces.add(piece);
        }
      }
      undersideM += thickM + scene.setting(Setting.STICKER_HEIGHT);
    }
    boolean sound = Soundness.sound(pile.spot());
    double carryS = sound ? carrying.personS(pile.spot().access(), pieces) : 0;
    return new PieceHours(0, scene.setting(Setting.PILE_SET_UP), carryS, pickS, 0, 0);
  }

  private Optional<Point> stand(String id) {
    return scene.task().site().machine().stand(id).map(MachineStand::at);
  }
}
