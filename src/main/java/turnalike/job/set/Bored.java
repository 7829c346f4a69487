package turnalike.job.set;

import java.util.Optional;
import turnalike.wood.Wood;

/**
 * A part of the frame that a tenon goes into.
 *
 * @param name what it is called: {@code hub}
 * @param wood what it is made of; empty where the frame does not say, and it is the piece's own
 */
public record Bored(String name, Optional<Wood> wood) {}
