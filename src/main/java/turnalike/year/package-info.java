/**
 * The joint through the year: how tenon and hole move between the driest and the dampest the wood comes to, and how snug they then are.
 *
 * <p>Words: a <b>season</b> is a moisture that the wood comes to and how it was told; a <b>home</b> the driest and the dampest season;
 * <b>interference</b> the tenon's size less the hole's, below zero where there is play. A round tenon is as long across as along its rings
 * when it is turned and oval afterwards; a hole bored across the grain moves across it and keeps its size along it.
 *
 * <p>Uses {@code units} and {@code wood}.
 */
@NullMarked
package turnalike.year;

import org.jspecify.annotations.NullMarked;
