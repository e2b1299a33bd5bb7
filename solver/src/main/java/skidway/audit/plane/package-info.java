/**
 * The audit's own plane geometry: segments, turned rectangles, polygons, and how far they are apart
 * or reach into each other. Written for the audit alone so that a fault in the geometry that plans
 * are made with cannot hide here. Open {@link skidway.audit.plane.Rectangle} first.
 */
@NullMarked
package skidway.audit.plane;

import org.jspecify.annotations.NullMarked;
