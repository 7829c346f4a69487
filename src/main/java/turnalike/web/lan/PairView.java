package turnalike.web.lan;

/**
 * The pairing as an unpaired device sees it.
 *
 * @param problem why it is not paired yet; empty at first
 */
public record PairView(String problem) {}
