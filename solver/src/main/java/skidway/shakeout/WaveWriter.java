package skidway.shakeout;

import java.util.ArrayList;
import java.util.List;
import skidway.plan.Brought;
import skidway.plan.PileTrip;
import skidway.plan.TimberPile;
import skidway.plan.Wave;
import skidway.plan.Way;
import skidway.site.Spot;
import skidway.timber.Piece;

/** Writes a wave in the making down as a part of the answer. */
final class WaveWriter {
  private final Timbers timbers;
  private final Room room;
  private final Pricing pricing;
  private final PileBearing bearing;

  WaveWriter(Timbers timbers, Room room) {
    this.timbers = timbers;
    this.room = room;
    pricing = new Pricing(timbers, room);
    bearing = new PileBearing(timbers.task);
  }

  /** The piles are called P1.1, P1.2 and so on: wave, then pile. */
  Wave wave(int number, WaveDraft draft) {
    List<TimberPile> piles = new ArrayList<>();
    List<Brought> brought = new ArrayList<>();
    List<PileTrip> trips = new ArrayList<>();
    for (PileDraft pile : draft.piles()) {
      String code = "P" + number + "." + (piles.size() + 1);
      piles.add(pile(code, pile));
      pile.pulls().forEach(i -> brought.add(brought(i, code, pile)));
      pile.trips().forEach(trip -> trips.add(trip(code, trip)));
    }
    int lowest = Integer.MAX_VALUE;
    int highest = 0;
    for (int i = draft.from(); i < draft.to(); i++) {
      lowest = Math.min(lowest, timbers.piece(i).course());
      highest = Math.max(highest, timbers.piece(i).course());
    }
    return new Wave(
        number,
        draft.from(),
        draft.to(),
        lowest,
        highest,
        piles,
        brought,
        trips,
        draft.cost().hours());
  }

  private TimberPile pile(String code, PileDraft pile) {
    List<Piece> pieces = pile.pulls().stream().map(timbers::piece).toList();
    int perLayer = pricing.perLayer(pieces.get(0));
    List<List<String>> layers = new ArrayList<>();
    for (int from = 0; from < pieces.size(); from += perLayer) {
      layers.add(
          pieces.subList(from, Math.min(pieces.size(), from + perLayer)).stream()
              .map(Piece::mark)
              .toList());
    }
    Spot place = room.places.get(pile.place());
    return new TimberPile(
        place.called(code),
        layers,
        pricing.heightM(pieces.get(0), pieces.size()),
        PileBearing.massKg(pieces),
        bearing.bearers(place, pieces, PileBottom.of(pieces, perLayer)));
  }

  private Brought brought(int i, String code, PileDraft pile) {
    return new Brought(
        timbers.piece(i).mark(),
        timbers.bundle(i).id(),
        timbers.spot(i).id(),
        code,
        pile.byMachine(i) ? Way.BY_MACHINE : Way.BY_HAND,
        timbers.people[i]);
  }

  private PileTrip trip(String code, PileDraft.Trip trip) {
    return new PileTrip(
        trip.bundleId(),
        timbers.spot(trip.pulls().get(0)).id(),
        code,
        trip.pulls().stream().map(i -> timbers.piece(i).mark()).toList(),
        trip.lift().pickStand().id(),
        trip.lift().stand().id(),
        trip.lift().reachM(),
        trip.massKg(),
        trip.lift().capacityKg());
  }
}
