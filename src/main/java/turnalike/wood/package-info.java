/**
 * Woods: what is printed about each species, and what follows for a piece of it at a moisture.
 *
 * <p>The facts are the Wood Handbook's (USDA Forest Products Laboratory, <i>Wood Handbook: Wood as an Engineering Material</i>,
 * FPL-GTR-190 of 2010 and FPL-GTR-282 of 2021; a work of the US Government), shipped as {@code wood.csv} on the class path. Every
 * group of facts names the sources it was seen in by a key, {@code S1} to {@code S17} or {@code memory}; {@code sources.csv} beside it
 * says what each key is, and {@link turnalike.wood.Equation} gives the number of every formula in both editions. Most sources are
 * transcriptions: the Handbook's own pages could not be opened. A blank cell is "not printed", never zero.
 *
 * <p>Words: <b>moisture</b> is the mass of water over the ovendry mass of the wood, in percent; <b>specific gravity</b> the ovendry mass
 * over the volume at a stated moisture, relative to water; <b>basic</b>, over the green volume; <b>shrinkage</b> the percent of the
 * green size lost from green to ovendry; a <b>coefficient</b> the fraction of a size gained per percentage point of moisture.
 *
 * <p>Uses {@code units} and commons-csv; reads its own tables from the class path and nothing else.
 */
@NullMarked
package turnalike.wood;

import org.jspecify.annotations.NullMarked;
