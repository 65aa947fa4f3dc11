/**
 * Sheets to paper: fills the templates with sheet records, lays the pages out, paints the drawings,
 * and writes a PDF that is tagged and archival (PDF/UA-1 with PDF/A-2a).
 *
 * <p>How a sheet reaches the page:
 *
 * <ol>
 *   <li>{@link pegbook.render.TemplateFolder} finds {@code binder.html}, which names its sheets in
 *       order: {@code <th:block th:insert="~{sheets/dig-schedule}"/>}.
 *   <li>{@code SheetTemplates} fills them. A template may use {@code th:text}, {@code th:if},
 *       {@code th:unless}, {@code th:each}, {@code th:with}, {@code th:switch}, {@code th:insert},
 *       {@code th:replace}, {@code th:fragment}, {@code th:classappend}, {@code th:attr} and any
 *       {@code th:name-of-an-attribute}. Between the braces of <code>${…}</code> stands a path of
 *       names through records, no call and no arithmetic ({@code RecordPaths}); <code>#{key}</code>
 *       is a text of the bundle.
 *   <li>{@code Markup} reads the result as well-formed XHTML; {@code MarkupRules} refuses what
 *       would come out wrong in silence.
 *   <li>{@code DocumentHead} adds title, language, style, page size, bookmarks, and fills {@code
 *       <div class="contents"/>}: all from the headings, h1 being a sheet's title.
 *   <li>{@code PlacedDrawings} gives each {@code <object type="application/x-pegbook-drawing"
 *       data-drawing="id"/>} the size and description of its drawing (the part {@code
 *       parts/drawing} writes that element); {@code FormPlaces} keeps a box for each {@code
 *       <input>}.
 *   <li>The layout library makes the pages. A drawing is painted through {@code DrawingPainter}, as
 *       lines and text in millimetres; {@code FormFields} then covers the kept boxes with fields.
 *   <li>{@code DocumentMark} writes dates and id from the job, so that a second run gives the same
 *       bytes. Whatever a library complained of is a {@link pegbook.render.RenderException}.
 * </ol>
 *
 * <p>What to know when writing a template:
 *
 * <ul>
 *   <li>A name that is not there is an error; what may be absent is an {@link java.util.Optional},
 *       which reads as nothing when empty: {@code th:if="${sheet.plan}"}.
 *   <li>{@code th:if} takes the strings "false", "no" and "off" for false and every other string,
 *       an empty one too, for true: ask {@code ${sheet.note.empty}}, or use a boolean.
 *   <li>The part {@code parts/page :: strip(…)} stands first inside each {@code <div
 *       class="sheet">}, before the heading, else the page before shows it.
 *   <li>Element and attribute names are a fixed list ({@code MarkupRules}); inputs do not stand in
 *       a table's head, for heads repeat; a form field has no margin, for its place is its box.
 *   <li>The fraction slash (U+2044) reaches under its neighbours: it belongs between raised and
 *       lowered figures only.
 * </ul>
 *
 * <p>The classes of the style sheet are listed at the top of {@code templates/style/packet.css}.
 */
@NullMarked
package pegbook.render;

import org.jspecify.annotations.NullMarked;
