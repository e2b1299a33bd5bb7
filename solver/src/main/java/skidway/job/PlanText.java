package skidway.job;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.OptionalDouble;
import skidway.plan.Baseline;
import skidway.plan.Effort;
import skidway.plan.Margin;
import skidway.plan.Plan;
import skidway.plan.Proof;
import skidway.plan.Reason;
import skidway.plan.Stack;
import skidway.plan.Step;
import skidway.plan.Unplaced;
import skidway.site.Spot;
import skidway.timber.BearerRow;

/**
 * Writes a plan as JSON for machines and people: fields in a fixed order, SI figures rounded to
 * what matters (0.1 or 1 mm, 0.01 kg, 0.1 s), the unit in the field's name. The same plan gives the
 * same text.
 */
final class PlanText {
  private final JsonGenerator json;

  private PlanText(JsonGenerator json) {
    this.json = json;
  }

  static String of(Plan plan) {
    return JsonText.of(json -> new PlanText(json).plan(plan));
  }

  private void plan(Plan plan) throws IOException {
    json.writeStartObject();
    json.writeNumberField("format", Format.CURRENT);
    json.writeStringField("jobName", plan.jobName());
    json.writeNumberField("revision", plan.revision());
    json.writeStringField("inputs", plan.inputs());
    json.writeStringField("previous", plan.previous());
    if (plan.events() > 0) {
      json.writeNumberField("events", plan.events());
    }
    if (!plan.heeded().check().isEmpty()) {
      json.writeStringField("eventsCheck", plan.heeded().check());
    }
    json.writeObjectFieldStart("search");
    json.writeNumberField("seed", plan.search().seed());
    json.writeNumberField("calculations", plan.search().calculations());
    if (plan.search().until() > 0) {
      json.writeNumberField("until", plan.search().until());
    }
    json.writeBooleanField("stopped", plan.search().stopped());
    json.writeEndObject();
    list("stacks", plan.stacks(), this::stack);
    list("waitingPlaces", plan.waitingPlaces(), this::spot);
    list("steps", plan.steps(), this::step);
    list("unplaced", plan.unplaced(), this::unplaced);
    list("reasons", plan.reasons(), this::reason);
    effort(plan.effort());
    if (plan.proof().isPresent()) {
      proof(plan.proof().get());
    }
    list("baselines", plan.baselines(), this::baseline);
    list("margins", plan.margins(), this::margin);
    json.writeEndObject();
  }

  private void stack(Stack stack) throws IOException {
    json.writeFieldName("spot");
    json.writeStartObject();
    spot(stack.spot());
    json.writeEndObject();
    texts("tiers", stack.bundleIds());
  }

  private void spot(Spot spot) throws IOException {
    json.writeStringField("id", spot.id());
    json.writeStringField("zone", spot.zoneId());
    json.writeStringField("kind", Words.of(spot.kind()));
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
  }

  private void step(Step step) throws IOException {
    json.writeNumberField("number", step.number());
    json.writeStringField("kind", Words.of(step.kind()));
    json.writeStringField("bundle", step.bundleId());
    json.writeStringField("from", step.fromId());
    json.writeStringField("to", step.toId());
    json.writeNumberField("tier", step.tier());
    if (!step.byHand()) {
      machine(step);
    }
    json.writeNumberField("massKg", Rounded.kg(step.massKg()));
    if (!step.byHand()) {
      json.writeNumberField("capacityKg", Rounded.kg(step.capacityKg()));
    }
    if (!step.bearers().equals(BearerRow.NONE)) {
      bearers(step.bearers());
    }
  }

  /** From where the machine lifts. */
  private void machine(Step step) throws IOException {
    json.writeStringField("stand", step.standId());
    if (!step.pickStandId().isEmpty()) {
      json.writeStringField("pickStand", step.pickStandId());
    }
    json.writeNumberField("reachM", Rounded.metres(step.reachM()));
  }

  private void bearers(BearerRow row) throws IOException {
    json.writeObjectFieldStart("bearers");
    json.writeNumberField("count", row.count());
    json.writeNumberField("spacingM", Rounded.place(row.spacingM()));
    json.writeNumberField("endM", Rounded.place(row.endM()));
    json.writeNumberField("lengthM", Rounded.place(row.lengthM()));
    json.writeEndObject();
  }

  private void unplaced(Unplaced unplaced) throws IOException {
    json.writeStringField("bundle", unplaced.bundleId());
    json.writeStringField("rule", unplaced.rule().id());
    json.writeStringField("sentence", unplaced.sentence());
  }

  private void reason(Reason reason) throws IOException {
    json.writeStringField("bundle", reason.bundleId());
    json.writeStringField("spot", reason.spotId());
    json.writeNumberField("costPersonS", Rounded.seconds(reason.costPersonS()));
    json.writeStringField("nextBestSpot", reason.nextBestSpotId());
    OptionalDouble next = reason.nextBestPersonS();
    if (next.isPresent()) {
      json.writeNumberField("nextBestPersonS", Rounded.seconds(next.getAsDouble()));
    }
    texts("sentences", reason.sentences());
  }

  /** To the millisecond: rounding must not turn a proof into a better one. */
  private void proof(Proof proof) throws IOException {
    json.writeObjectFieldStart("proof");
    json.writeNumberField("lowestPersonS", proof.lowestPersonS());
    json.writeNumberField("countedPersonS", proof.countedPersonS());
    texts("ignored", proof.ignored().stream().map(Words::of).toList());
    json.writeEndObject();
  }

  private void baseline(Baseline baseline) throws IOException {
    json.writeStringField("name", baseline.name());
    json.writeStringField("sentence", baseline.sentence());
    json.writeNumberField("placed", baseline.placed());
    effort(baseline.effort());
  }

  private void effort(Effort effort) throws IOException {
    json.writeObjectFieldStart("effort");
    json.writeNumberField("carryS", Rounded.seconds(effort.carryS()));
    json.writeNumberField("pickS", Rounded.seconds(effort.pickS()));
    json.writeNumberField("rehandleS", Rounded.seconds(effort.rehandleS()));
    if (effort.insideS().isPresent()) {
      json.writeNumberField("insideS", Rounded.seconds(effort.insideS().getAsDouble()));
    }
    json.writeNumberField("setDownS", Rounded.seconds(effort.setDownS()));
    json.writeNumberField("machineS", Rounded.seconds(effort.machineS()));
    if (effort.moveS() > 0) {
      json.writeNumberField("moveS", Rounded.seconds(effort.moveS()));
    }
    if (effort.offTruckS() > 0) {
      json.writeNumberField("offTruckS", Rounded.seconds(effort.offTruckS()));
    }
    json.writeEndObject();
  }

  /** The unit is for the reader's eye; the rule decides it. */
  private void margin(Margin margin) throws IOException {
    var measure = margin.rule().measure();
    json.writeStringField("rule", margin.rule().id());
    json.writeStringField("where", margin.where());
    json.writeNumberField("value", Rounded.of(measure, margin.value()));
    json.writeNumberField("limit", Rounded.of(measure, margin.limit()));
    json.writeStringField("unit", measure.siUnit());
    json.writeBooleanField("atLeast", margin.atLeast());
  }

  private void texts(String name, List<String> texts) throws IOException {
    json.writeArrayFieldStart(name);
    for (String text : texts) {
      json.writeString(text);
    }
    json.writeEndArray();
  }

  private <T> void list(String name, List<T> things, Writing<T> writing) throws IOException {
    json.writeArrayFieldStart(name);
    for (T thing : things) {
      json.writeStartObject();
      writing.fields(thing);
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  /** Writes the fields of one thing. */
  private interface Writing<T> {
    void fields(T thing) throws IOException;
  }
}
