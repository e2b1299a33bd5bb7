/**
 * Answers questions of distance and overlap: how far footprints lie apart ({@link
 * skidway.geometry.Rectangle}), whether one lies in or on an outline ({@link
 * skidway.geometry.Area}), how far people walk ({@link skidway.geometry.WalkingMap}; open it first
 * for walking). Knows the site, nothing of rules or settings: callers pass plain numbers. The only
 * package that imports JTS and JGraphT, and neither shows in a public signature.
 */
@NullMarked
package skidway.geometry;

import org.jspecify.annotations.NullMarked;
