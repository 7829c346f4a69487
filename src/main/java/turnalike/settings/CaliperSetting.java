package turnalike.settings;

import java.util.List;
import java.util.stream.Stream;
import turnalike.units.Length;

/**
 * One opening of the calipers and the members sized with it.
 *
 * @param opening what to set: finished size and sizing allowance together
 * @param finished the opening less the sizing allowance, unless the wood is not that thick; each of the members' finished diameters is
 *     within the tolerance of it
 * @param leastLeft the least that the sizing cut leaves on any of the members to be cut to the line and sanded; not negative
 * @param members indices of the members, rising, each once
 */
public record CaliperSetting(Length opening, Length finished, Length leastLeft, List<Integer> members) {
    public CaliperSetting {
        members = List.copyOf(members);
    }

    /**
     * {@return the same set no wider than that} Where the wood is no thicker, a wider opening would size nothing.
     *
     * @param most the most there is to size, above zero
     */
    public CaliperSetting atMost(Length most) {
        if (opening.compareTo(most) <= 0) {
            return this;
        }
        Length left = leastLeft.minus(opening.minus(most));
        return new CaliperSetting(most, finished, left.isPositive() ? left : Length.ZERO, members);
    }

    /**
     * {@return this and another of the same opening as one}
     *
     * @param other with the same opening, else {@link IllegalArgumentException}
     */
    public CaliperSetting with(CaliperSetting other) {
        if (!opening.equals(other.opening)) {
            throw new IllegalArgumentException(
                    "openings must be the same, were %s and %s mm".formatted(opening.mm(), other.opening.mm()));
        }
        List<Integer> both = Stream.concat(members.stream(), other.members.stream())
                .distinct()
                .sorted()
                .toList();
        Length left = leastLeft.compareTo(other.leastLeft) < 0 ? leastLeft : other.leastLeft;
        return new CaliperSetting(
                opening, finished.compareTo(other.finished) > 0 ? finished : other.finished, left, both);
    }
}
