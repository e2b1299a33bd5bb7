package skidway.audit;

import skidway.timber.Piece;

/**
 * What each carrier of a piece takes, over what is recommended, at the worse end of its way.
 *
 * @param index 1 or less is the aim; endless where nothing is to be lifted
 * @param end where that is, to go on a sentence with
 */
record HandLoad(Piece piece, double index, String end) {}
