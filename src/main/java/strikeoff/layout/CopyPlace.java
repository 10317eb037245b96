package strikeoff.layout;

import org.locationtech.jts.geom.Polygon;

/**
 * A place found for one copy of a design, before placements are numbered through.
 *
 * @param number its number in the arrangement, from 1
 * @param x lower left corner of what is seen, mm
 * @param anchor what it is set from; null if nothing
 */
record CopyPlace(int number, double x, double y, Polygon outline, CopyPlace anchor) {}
