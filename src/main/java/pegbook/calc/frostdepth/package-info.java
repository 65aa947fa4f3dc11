/**
 * How deep frost goes: the authority's figure, which rules; estimates beside it where the job gives
 * a freezing index; what the soil makes of frost.
 */
@NullMarked
package pegbook.calc.frostdepth;

import org.jspecify.annotations.NullMarked;
