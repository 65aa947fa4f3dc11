package pegbook.render;

import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import pegbook.sheet.drawing.Drawing;

/**
 * One document to print.
 *
 * @param template name of its template, such as {@code binder}
 * @param language language tag of its words, such as {@code en}
 * @param title title of the document, shown by the reader's window
 * @param subject what it is about, in a sentence
 * @param author who made it
 * @param issued date of issue, which is the only date the document carries
 * @param hash hash of the job file in hexadecimal digits, from which the document's id is made
 * @param paper what it is printed on
 * @param strip the foot of every page
 * @param model what the templates may read: strings, booleans, lists and records of them, by name
 * @param drawings the drawings that its sheets place, each once
 * @param texts the words: the text of a message key, or none when there is no such key
 */
public record PacketDocument(
    String template,
    String language,
    String title,
    String subject,
    String author,
    Optional<LocalDate> issued,
    String hash,
    PageSize paper,
    TitleStrip strip,
    Map<String, Object> model,
    List<Drawing> drawings,
    Function<String, Optional<String>> texts) {
  public PacketDocument {
    model = Collections.unmodifiableMap(new LinkedHashMap<>(model));
    drawings = List.copyOf(drawings);
    if (title.isBlank() || subject.isBlank() || language.isBlank()) {
      throw new IllegalArgumentException("a document needs a title, a subject and a language");
    }
    if (Stream.of(title, subject, author)
        .anyMatch(text -> text.codePoints().anyMatch(Character::isISOControl))) {
      throw new IllegalArgumentException("a control character in title, subject or author");
    }
    if (!hash.matches("[0-9a-f]{16,}")) {
      throw new IllegalArgumentException("not a hash of 16 or more hexadecimal digits: " + hash);
    }
  }
}
