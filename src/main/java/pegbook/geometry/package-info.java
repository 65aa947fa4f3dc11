/**
 * Points, lines, polygons and outlines in one frame.
 *
 * <p>Frame: x to the east, y to the north, in metres, origin at the outline's centre (the area
 * centroid). Azimuths run clockwise from true north; a polygon's corners run clockwise seen from
 * above. Nothing here knows about jobs, units of notation or paper.
 */
@NullMarked
package pegbook.geometry;

import org.jspecify.annotations.NullMarked;
