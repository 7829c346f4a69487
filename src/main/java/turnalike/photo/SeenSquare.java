package turnalike.photo;

/**
 * One of the sheet's squares as it was found in the picture.
 *
 * @param number which, from 0
 * @param x of its corners, pixels: upper left, upper right, lower right, lower left of one who reads the sheet
 * @param y of them
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record SeenSquare(int number, double[] x, double[] y) {}
