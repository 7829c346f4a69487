package turnalike.settings;

import java.util.List;
import turnalike.units.Length;

/**
 * One opening of the calipers and the members sized with it.
 *
 * @param opening what to set: finished size and sizing allowance together
 * @param finished the opening less the sizing allowance; each of the members' finished diameters is within the tolerance of it
 * @param leastLeft the least that the sizing cut leaves on any of the members to be cut to the line and sanded; not negative
 * @param members indices of the members, rising, each once
 */
public record CaliperSetting(Length opening, Length finished, Length leastLeft, List<Integer> members) {
    public CaliperSetting {
        members = List.copyOf(members);
    }
}
