package skidway.job;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import skidway.progress.Event;

/** Writes an event as a JSON object on one line, fields in a fixed order. */
final class EventText implements Event.Cases<EventText.Fill> {
  /** Writes the fields that only one kind of event has. */
  interface Fill {
    void into(JsonGenerator json) throws IOException;
  }

  static String of(Event event, PlanMark plan, String jobName) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.writeStartObject();
      json.writeNumberField("seq", event.seq());
      json.writeStringField("at", event.at().toString());
      json.writeStringField("by", event.by());
      event.match(new EventText()).into(json);
      json.writeObjectFieldStart("plan");
      json.writeNumberField("revision", plan.revision());
      json.writeStringField("fingerprint", plan.fingerprint());
      json.writeEndObject();
      json.writeStringField("job", jobName);
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException("Writing into memory failed.", e);
    }
    return text.toString();
  }

  @Override
  public Fill arrived(Event.Arrived event) {
    return kind("arrived", "load", event.loadId());
  }

  @Override
  public Fill placed(Event.Placed event) {
    return put("placed", event.bundleId(), event.spotId(), event.tier());
  }

  @Override
  public Fill moved(Event.Moved event) {
    return put("moved", event.bundleId(), event.spotId(), event.tier());
  }

  @Override
  public Fill missing(Event.Missing event) {
    return noted(kind("missing", "id", event.id()), event.note());
  }

  @Override
  public Fill damaged(Event.Damaged event) {
    return noted(kind("damaged", "id", event.id()), event.note());
  }

  @Override
  public Fill extra(Event.Extra event) {
    return noted(
        json -> {
          kind("extra", "load", event.loadId()).into(json);
          json.writeStringField("id", event.id());
        },
        event.note());
  }

  @Override
  public Fill found(Event.Found event) {
    return kind("found", "id", event.id());
  }

  @Override
  public Fill late(Event.Late event) {
    return json -> {
      kind("late", "load", event.loadId()).into(json);
      json.writeStringField("until", event.until().toString());
    };
  }

  @Override
  public Fill pulled(Event.Pulled event) {
    return json -> {
      kind("pulled", "through", event.through()).into(json);
      json.writeArrayFieldStart("pieces");
      for (String mark : event.marks()) {
        json.writeString(mark);
      }
      json.writeEndArray();
    };
  }

  @Override
  public Fill undo(Event.Undo event) {
    return json -> {
      json.writeStringField("kind", "undo");
      json.writeNumberField("undone", event.undone());
    };
  }

  private static Fill noted(Fill fill, String note) {
    return json -> {
      fill.into(json);
      if (!note.isEmpty()) {
        json.writeStringField("note", note);
      }
    };
  }

  private static Fill put(String kind, String bundleId, String spotId, int tier) {
    return json -> {
      kind(kind, "bundle", bundleId).into(json);
      json.writeStringField("spot", spotId);
      json.writeNumberField("tier", tier);
    };
  }

  private static Fill kind(String kind, String name, String id) {
    return json -> {
      json.writeStringField("kind", kind);
      json.writeStringField(name, id);
    };
  }
}
