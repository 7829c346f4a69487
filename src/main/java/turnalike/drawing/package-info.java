/**
 * Every picture of the program, used on the page, on paper and in files: the SVG they are made of in {@code svg}, what they show in a room
 * each. May use the levels below it and no third-party code.
 */
@NullMarked
package turnalike.drawing;

import org.jspecify.annotations.NullMarked;
