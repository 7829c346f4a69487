package turnalike.turning;

import java.util.Optional;
import turnalike.units.Force;
import turnalike.units.Length;

/**
 * Where one member is bent hardest while the piece is cut.
 *
 * @param member its index
 * @param place where, from the start
 * @param diameter of the piece there, as it is then
 * @param stressMpa the bending stress there under the cutting force
 * @param cut the number of the cut that bends it so
 * @param loadAt where the tool pushes then
 * @param mends what would mend it; empty where it is borne
 */
public record Strain(
        int member, Length place, Length diameter, double stressMpa, int cut, Length loadAt, Optional<Mends> mends) {
    /**
     * What would mend it, each by itself.
     *
     * @param lastMpa the stress there when this member is sized and cut last of all, the rest finished
     * @param support where one more support, a steady rest or a hand, takes most from the stress; on a round place
     * @param supportedMpa the stress there with that support
     * @param force the cutting force that is borne
     * @param diameter the thickness there that is borne, under the same bending moment
     */
    public record Mends(double lastMpa, Length support, double supportedMpa, Force force, Length diameter) {}
}
