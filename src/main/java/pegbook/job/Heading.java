package pegbook.job;

import java.time.LocalDate;
import java.util.Optional;
import pegbook.measure.UnitSystem;

/**
 * What the packet is called and how it prints.
 *
 * @param title name of the structure
 * @param revision mark of this issue of the packet, "A" at first
 * @param issued date of issue
 * @param owner who builds and answers for it, as the title strip shows it
 * @param units how the packet prints; the job may mix
 * @param paper what it is printed on
 */
public record Heading(
    String title,
    String revision,
    Optional<LocalDate> issued,
    Optional<String> owner,
    UnitSystem units,
    Paper paper) {}
