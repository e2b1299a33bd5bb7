package skidway.job;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.PathType;
import com.networknt.schema.SchemaValidatorsConfig;
import com.networknt.schema.SpecVersion;
import java.util.List;

/** A published schema as a general validator understands it. */
final class Schema {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final JsonSchema schema;

  Schema(String name) {
    SchemaValidatorsConfig config =
        SchemaValidatorsConfig.builder().pathType(PathType.JSON_POINTER).build();
    schema =
        JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
            .getSchema(Schemas.of(name), config);
  }

  static JsonNode tree(String text) {
    try {
      return JSON.readTree(text);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException(e);
    }
  }

  /** Where a file is not as the schema says, as JSON pointers. */
  List<String> wrongPlaces(JsonNode file) {
    return schema.validate(file).stream().map(m -> m.getInstanceLocation().toString()).toList();
  }
}
