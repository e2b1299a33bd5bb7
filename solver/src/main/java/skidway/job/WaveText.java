package skidway.job;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import skidway.plan.Brought;
import skidway.plan.PieceHours;
import skidway.plan.PileTrip;
import skidway.plan.TimberPile;
import skidway.plan.Wave;
import skidway.plan.WavePlan;
import skidway.site.Spot;

/** Writes waves as JSON, in the manner of {@link PlanText}. */
final class WaveText {
  private final JsonGenerator json;

  private WaveText(JsonGenerator json) {
    this.json = json;
  }

  static String of(WavePlan waves) {
    return JsonText.of(json -> new WaveText(json).waves(waves));
  }

  private void waves(WavePlan waves) throws IOException {
    json.writeStartObject();
    json.writeNumberField("format", Format.CURRENT);
    json.writeStringField("jobName", waves.jobName());
    json.writeNumberField("revision", waves.revision());
    json.writeStringField("plan", waves.plan());
    json.writeArrayFieldStart("waves");
    for (Wave wave : waves.waves()) {
      wave(wave);
    }
    json.writeEndArray();
    hours("straight", waves.straight());
    hours("hours", waves.hours());
    json.writeEndObject();
  }

  private void wave(Wave wave) throws IOException {
    json.writeStartObject();
    json.writeNumberField("number", wave.number());
    json.writeNumberField("laidBefore", wave.laidBefore());
    json.writeNumberField("laidAfter", wave.laidAfter());
    json.writeNumberField("fromCourse", wave.fromCourse());
    json.writeNumberField("toCourse", wave.toCourse());
    json.writeArrayFieldStart("piles");
    for (TimberPile pile : wave.piles()) {
      pile(pile);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("brought");
    for (Brought brought : wave.brought()) {
      brought(brought);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("trips");
    for (PileTrip trip : wave.trips()) {
      trip(trip);
    }
    json.writeEndArray();
    hours("hours", wave.hours());
    json.writeEndObject();
  }

  private void pile(TimberPile pile) throws IOException {
    Spot spot = pile.spot();
    json.writeStartObject();
    json.writeStringField("id", spot.id());
    json.writeStringField("zone", spot.zoneId());
    json.writeArrayFieldStart("centreM");
    json.writeNumber(Rounded.place(spot.footprint().centre().x()));
    json.writeNumber(Rounded.place(spot.footprint().centre().y()));
    json.writeEndArray();
    json.writeNumberField("headingDeg", Rounded.degrees(spot.footprint().headingDeg()));
    json.writeNumberField("lengthM", Rounded.place(spot.footprint().lengthM()));
    json.writeNumberField("widthM", Rounded.place(spot.footprint().widthM()));
    json.writeStringField("openSide", Words.of(spot.openSide()));
    json.writeNumberField("stripM", Rounded.place(spot.stripM()));
    if (spot.massLimitKg().isPresent()) {
      json.writeNumberField("massLimitKg", Rounded.kg(spot.massLimitKg().getAsDouble()));
    }
    json.writeArrayFieldStart("layers");
    for (List<String> layer : pile.layers()) {
      marks(layer);
    }
    json.writeEndArray();
    json.writeNumberField("heightM", Rounded.metres(pile.heightM()));
    json.writeNumberField("massKg", Rounded.kg(pile.massKg()));
    json.writeObjectFieldStart("bearers");
    json.writeNumberField("count", pile.bearers().count());
    json.writeNumberField("spacingM", Rounded.place(pile.bearers().spacingM()));
    json.writeNumberField("endM", Rounded.place(pile.bearers().endM()));
    json.writeNumberField("lengthM", Rounded.place(pile.bearers().lengthM()));
    json.writeEndObject();
    json.writeEndObject();
  }

  private void brought(Brought brought) throws IOException {
    json.writeStartObject();
    json.writeStringField("mark", brought.mark());
    json.writeStringField("bundle", brought.bundleId());
    json.writeStringField("from", brought.fromSpotId());
    json.writeStringField("to", brought.pileId());
    json.writeStringField("way", Words.of(brought.way()));
    json.writeNumberField("people", brought.people());
    json.writeEndObject();
  }

  private void trip(PileTrip trip) throws IOException {
    json.writeStartObject();
    json.writeStringField("bundle", trip.bundleId());
    json.writeStringField("from", trip.fromSpotId());
    json.writeStringField("to", trip.pileId());
    json.writeFieldName("marks");
    marks(trip.marks());
    json.writeStringField("pickStand", trip.pickStandId());
    json.writeStringField("stand", trip.standId());
    json.writeNumberField("reachM", Rounded.metres(trip.reachM()));
    json.writeNumberField("massKg", Rounded.kg(trip.massKg()));
    json.writeNumberField("capacityKg", Rounded.kg(trip.capacityKg()));
    json.writeEndObject();
  }

  private void marks(List<String> marks) throws IOException {
    json.writeStartArray();
    for (String mark : marks) {
      json.writeString(mark);
    }
    json.writeEndArray();
  }

  private void hours(String name, PieceHours hours) throws IOException {
    json.writeObjectFieldStart(name);
    json.writeNumberField("bringS", Rounded.seconds(hours.bringS()));
    json.writeNumberField("layS", Rounded.seconds(hours.layS()));
    json.writeNumberField("carryS", Rounded.seconds(hours.carryS()));
    json.writeNumberField("pickS", Rounded.seconds(hours.pickS()));
    json.writeNumberField("asideS", Rounded.seconds(hours.asideS()));
    json.writeNumberField("machineS", Rounded.seconds(hours.machineS()));
    json.writeEndObject();
  }
}
