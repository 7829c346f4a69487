package turnalike.api;

import turnalike.units.Length;

/**
 * One step of the work at the lathe.
 *
 * @param order from 1
 * @param what what to do, a sentence without its point
 * @param from the line it begins at, from the start end
 * @param to the line it reaches, not before {@code from}
 * @param caution what to beware of; empty for none
 */
public record LatheStep(int order, String what, Length from, Length to, String caution) {}
