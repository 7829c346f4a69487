package turnalike.pieces.control;

/**
 * A piece at which a rule says the process has changed.
 *
 * @param piece the label of the piece that completes the pattern
 * @param rule the rule
 * @param words what is seen, with the pieces it is seen over
 */
public record Signal(String piece, RunRule rule, String words) {}
