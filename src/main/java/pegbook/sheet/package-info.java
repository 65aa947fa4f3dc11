/**
 * Figures to strings and drawings ready to print. Formats and words; decides nothing.
 *
 * <p>Each sheet is a record of strings, booleans, lists, further records and drawings, made from
 * the packet's figures by its {@code of(Packet, Writing)}; its template only places them.
 */
@NullMarked
package pegbook.sheet;

import org.jspecify.annotations.NullMarked;
