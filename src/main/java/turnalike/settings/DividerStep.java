package turnalike.settings;

/**
 * One step of the dividers, from a mark that stands to a mark it gives.
 *
 * @param from index of the mark the fixed leg stands on
 * @param to index of the mark that is struck
 * @param round how many steps the struck mark then is from a given mark (an end, a shoulder line, one from the stick): a mark of an
 *     earlier round must be struck before one of a later round that starts from it
 */
public record DividerStep(int from, int to, int round) {}
