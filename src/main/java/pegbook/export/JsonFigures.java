package pegbook.export;

import com.fasterxml.jackson.core.JsonEncoding;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import pegbook.measure.Quantity;

/**
 * Writes figures as JSON: keys in the order they are written, numbers in SI with ten significant
 * digits, absent values left out, lines ended by a line feed on every machine.
 */
final class JsonFigures {
  private final JsonGenerator json;

  private JsonFigures(JsonGenerator json) {
    this.json = json;
  }

  /** A whole document. */
  static byte[] document(Consumer<JsonFigures> content) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
    printer.indentObjectsWith(indenter);
    printer.indentArraysWith(indenter);
    try (JsonGenerator json = new JsonFactory().createGenerator(bytes, JsonEncoding.UTF8)) {
      json.setPrettyPrinter(printer);
      json.writeStartObject();
      content.accept(new JsonFigures(json));
      json.writeEndObject();
      json.writeRaw('\n');
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  private interface Step {
    void write() throws IOException;
  }

  private JsonFigures write(Step step) {
    try {
      step.write();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return this;
  }

  JsonFigures text(String key, String value) {
    return write(() -> json.writeStringField(key, value));
  }

  JsonFigures text(String key, Optional<String> value) {
    value.ifPresent(present -> text(key, present));
    return this;
  }

  JsonFigures whole(String key, long value) {
    return write(() -> json.writeNumberField(key, value));
  }

  JsonFigures flag(String key, boolean value) {
    return write(() -> json.writeBooleanField(key, value));
  }

  /** A pure number. */
  JsonFigures number(String key, double value) {
    return write(() -> json.writeNumberField(key, Digits.of(value)));
  }

  /** A quantity in its SI unit; the key ends with the unit's name. */
  JsonFigures quantity(String key, Quantity value) {
    return number(key, value.si());
  }

  JsonFigures quantity(String key, Optional<? extends Quantity> value) {
    value.ifPresent(present -> quantity(key, present));
    return this;
  }

  JsonFigures texts(String key, List<String> values) {
    return write(
        () -> {
          json.writeArrayFieldStart(key);
          for (String value : values) {
            json.writeString(value);
          }
          json.writeEndArray();
        });
  }

  JsonFigures numbers(String key, List<Double> values) {
    return write(
        () -> {
          json.writeArrayFieldStart(key);
          for (Double value : values) {
            json.writeNumber(Digits.of(value));
          }
          json.writeEndArray();
        });
  }

  JsonFigures object(String key, Consumer<JsonFigures> content) {
    return write(
        () -> {
          json.writeObjectFieldStart(key);
          content.accept(this);
          json.writeEndObject();
        });
  }

  /** A list of objects. */
  <T> JsonFigures list(String key, List<T> items, ItemWriter<T> content) {
    return write(
        () -> {
          json.writeArrayFieldStart(key);
          for (T item : items) {
            json.writeStartObject();
            content.write(this, item);
            json.writeEndObject();
          }
          json.writeEndArray();
        });
  }

  /** Writes one object of a list. */
  interface ItemWriter<T> {
    void write(JsonFigures json, T item);
  }
}
