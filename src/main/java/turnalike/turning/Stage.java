package turnalike.turning;

import turnalike.units.Force;
import turnalike.units.Speed;

/**
 * The piece as it stands between centres after some of the cuts.
 *
 * @param name what has been done: {@code roughed cylinder}
 * @param first its first natural speed
 * @param second its second natural speed
 * @param buckling the end force that bows it
 * @param most where it gives way most under the cutting force, and how far
 */
public record Stage(String name, Speed first, Speed second, Force buckling, Whip.Sag most) {}
