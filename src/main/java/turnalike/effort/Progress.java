package turnalike.effort;

/**
 * How far a search has come.
 *
 * @param what what is being searched, in the user's words
 * @param best the best value found so far, in the search's own measure (smaller is better)
 * @param bound what no answer can be below, as far as proven
 */
public record Progress(String what, double best, double bound) {}
