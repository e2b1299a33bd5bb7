package skidway.audit;

import skidway.timber.Piece;

/**
 * A piece as it is drawn from where it lies.
 *
 * @param heightM of its middle above what people stand on there
 * @param upright whether it stands in a rack
 */
record Pick(Piece piece, String spotId, double heightM, boolean upright) {}
