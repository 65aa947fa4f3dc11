package pegbook.jobfile;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import pegbook.measure.UnitSystem;

/** Keeps {@code input/job.schema.json} in step with the reader's tables of keys. */
class JobSchemaTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Path FILE = Path.of("input/job.schema.json");
  private static final JsonNode ROOT = read();
  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(ROOT.toString(), InputFormat.JSON);

  private static JsonNode read() {
    try {
      return JSON.readTree(Files.readAllBytes(FILE));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  static Stream<Path> examples() throws IOException {
    return ExampleJobsTest.examples();
  }

  @ParameterizedTest
  @MethodSource("examples")
  void everyExampleIsValid(Path example) throws IOException {
    assertThat(SCHEMA.validate(Files.readString(example), InputFormat.JSON)).isEmpty();
  }

  @Test
  void theSchemaIsASchema() {
    Schema meta =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema("{\"$ref\": \"https://json-schema.org/draft/2020-12/schema\"}");

    assertThat(meta.validate(ROOT.toString(), InputFormat.JSON)).isEmpty();
  }

  @Test
  void sameKeysLimitsAndDefaultsAtEveryLevel() {
    List<String> seen = new ArrayList<>();

    object(JobKeys.ALL, ROOT, "", seen);

    assertThat(seen).hasSizeGreaterThan(100).doesNotHaveDuplicates();
  }

  @Test
  void everyKeySaysWhatItMeans() {
    assertThat(ROOT.findParents("properties"))
        .allSatisfy(
            object ->
                object
                    .get("properties")
                    .properties()
                    .forEach(
                        key ->
                            assertThat(key.getValue().path("description").asText())
                                .as(key.getKey())
                                .hasSizeGreaterThan(5)
                                .endsWith(".")));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "3 ft 6 in", "42 IN", "5½ in", "5-1/2 in", "3' 6\"", "12′ 9 3⁄8″", "-1 1/2 in", "−½\"",
        ".5 in", "3 894 mm", "3\u00a0894 mm", "1 m 20 cm", "3’ 6”", "3 feet", "2 inches",
            "1.2 Metres"
      })
  void lengthsThatTheReaderTakesAreValid(String length) {
    String job = EXAMPLE.replace("LENGTH", length.replace("\"", "\\\""));

    assertThat(SCHEMA.validate(job, InputFormat.JSON)).isEmpty();
    assertThat(JobFileReader.read("x.json", job.getBytes(java.nio.charset.StandardCharsets.UTF_8)))
        .isInstanceOf(JobFile.Read.class);
  }

  @ParameterizedTest
  @ValueSource(strings = {"900", "below", "42 lb", "12 deg", ""})
  void textsThatAreNoLengthsAreNot(String text) {
    String job = EXAMPLE.replace("LENGTH", text);

    assertThat(SCHEMA.validate(job, InputFormat.JSON)).hasSize(1);
  }

  private static final String EXAMPLE =
      """
      {"title": "x", "ground": {"soil": "sand", "levels": {"S1": "LENGTH"}},
       "layout": {"outline": {"circle": {"diameter": "9 ft", "posts": 4}}}}
      """;

  private void object(List<Key<?>> keys, JsonNode schema, String path, List<String> seen) {
    JsonNode properties = schema.path("properties");
    List<String> names = keys.stream().<String>map(Key::name).toList();
    assertThat(names(properties)).as(path).containsExactlyElementsOf(names);
    assertThat(schema.path("additionalProperties").asBoolean(true)).as(path).isFalse();
    List<String> required =
        keys.stream()
            .filter(key -> key.presence() instanceof Key.Presence.Required)
            .<String>map(Key::name)
            .toList();
    assertThat(texts(schema.path("required"))).as(path).containsExactlyElementsOf(required);
    for (Key<?> key : keys) {
      String keyPath = path + "." + key.name();
      seen.add(keyPath);
      JsonNode property = properties.get(key.name());
      defaults(key, property, keyPath);
      value(key.value(), property, keyPath, seen);
    }
  }

  private static void defaults(Key<?> key, JsonNode property, String path) {
    String imperial = key.defaultJson(UnitSystem.IMPERIAL);
    if (imperial.isEmpty() || imperial.equals("{}")) {
      assertThat(property.has("default")).as(path).isFalse();
      return;
    }
    assertThat(property.get("default")).as(path).isEqualTo(json(imperial));
    String metric = key.defaultJson(UnitSystem.METRIC);
    if (!metric.equals(imperial)) {
      assertThat(property.get("description").asText())
          .as(path)
          .contains("a metric job takes " + json(metric).asText() + ".");
    }
  }

  private void value(Value<?> value, JsonNode given, String path, List<String> seen) {
    JsonNode schema = resolved(given);
    if (value instanceof SectionValue<?> section) {
      object(section.keys(), schema, path, seen);
    } else if (value instanceof ListValue<?> list) {
      assertThat(schema.path("minItems").asInt()).as(path).isEqualTo(list.least());
      assertThat(schema.path("maxItems").asInt()).as(path).isEqualTo(list.most());
      value(list.item(), schema.path("items"), path + "[]", seen);
    } else if (value instanceof ChoiceValue<?> choice) {
      assertThat(texts(schema.path("enum"))).as(path).containsExactlyElementsOf(choice.words());
    } else if (value instanceof WholeNumber number) {
      assertThat(schema.path("type").asText()).as(path).isEqualTo("integer");
      assertThat(schema.path("minimum").asInt()).as(path).isEqualTo(number.least());
      assertThat(schema.path("maximum").asInt()).as(path).isEqualTo(number.most());
    } else if (value instanceof TextValue text) {
      assertThat(schema.path("maxLength").asInt()).as(path).isEqualTo(text.longest());
    } else if (value instanceof QuantityValue<?> quantity) {
      quantity(quantity, given, path);
    } else if (value instanceof PlaceValue) {
      assertThat(given.path("$ref").asText()).as(path).isEqualTo("#/$defs/place");
    } else if (value instanceof MappedValue<?, ?> mapped) {
      value(mapped.value(), given, path, seen);
    } else {
      alternatives(value, schema, path, seen);
    }
  }

  private void alternatives(Value<?> value, JsonNode schema, String path, List<String> seen) {
    if (value instanceof WordOr<?> wordOr) {
      assertThat(schema.path("anyOf").path(0).path("const").asText()).isEqualTo(wordOr.word());
      JsonNode other =
          ((com.fasterxml.jackson.databind.node.ObjectNode)
              schema.path("anyOf").path(1).deepCopy());
      ((com.fasterxml.jackson.databind.node.ObjectNode) other)
          .put("description", schema.path("description").asText());
      value(wordOr.value(), other, path, seen);
    } else if (value instanceof ShortForm<?> shortForm) {
      value(shortForm.section(), schema.path("anyOf").path(1), path, seen);
      JsonNode main = schema.path("anyOf").path(1).path("properties").path(shortForm.main().name());
      JsonNode alone = schema.path("anyOf").path(0);
      assertThat(alone.path("$ref")).as(path).isEqualTo(main.path("$ref"));
      assertThat(alone.path("enum")).as(path).isEqualTo(main.path("enum"));
    } else if (value instanceof LevelsValue levels) {
      assertThat(schema.path("propertyNames").path("$ref").asText()).isEqualTo("#/$defs/mark");
      assertThat(schema.path("additionalProperties").path("$ref").asText())
          .isEqualTo("#/$defs/length");
      limits(levels.level(), schema, path);
    } else {
      assertThat(value).as(path).isInstanceOf(CheckedText.class);
      boolean text = schema.path("type").asText().equals("string") || schema.has("enum");
      assertThat(text).as(path).isTrue();
    }
  }

  private static void quantity(QuantityValue<?> quantity, JsonNode given, String path) {
    String kind = quantity.notation().kind().name().toLowerCase(Locale.ROOT);
    assertThat(given.path("$ref").asText()).as(path).isEqualTo("#/$defs/" + kind);
    limits(quantity, given, path);
  }

  private static void limits(QuantityValue<?> quantity, JsonNode described, String path) {
    String description = described.path("description").asText();
    var range = quantity.range();
    assertThat(description).as(path).contains("From " + range.least() + " to " + range.most());
    if (!range.leastMetric().equals(range.least())) {
      assertThat(description)
          .as(path)
          .contains("(" + range.leastMetric() + " to " + range.mostMetric() + ")");
    }
  }

  private static JsonNode resolved(JsonNode schema) {
    String ref = schema.path("$ref").asText();
    return ref.isEmpty() ? schema : ROOT.at(ref.substring(1));
  }

  private static List<String> names(JsonNode object) {
    List<String> names = new ArrayList<>();
    object.fieldNames().forEachRemaining(names::add);
    return names;
  }

  private static List<String> texts(JsonNode list) {
    List<String> texts = new ArrayList<>();
    if (list instanceof ArrayNode) {
      list.forEach(item -> texts.add(item.asText()));
    }
    return texts;
  }

  private static JsonNode json(String text) {
    try {
      return JSON.readTree(text);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
