package turnalike.settings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import turnalike.units.Length;

/** Groups the diameters to be sized into the fewest caliper openings. */
public final class Calipers {
    /**
     * The thinnest that is sized with calipers: between jaws nearer than that a spire's tip is hardly seen, and they break it before they tell
     * anything. Common practice, no source.
     */
    public static final Length LEAST = Length.ofInches(5 / 64.0);

    private Calipers() {}

    /**
     * {@return whether calipers size it} What is thinner is worked by eye, held against the template.
     *
     * @param finished diameter
     */
    public static boolean canSize(Length finished) {
        return finished.compareTo(LEAST) >= 0;
    }

    /**
     * {@return the fewest openings for these diameters, the smallest first} Each member is sized to its finished diameter and the sizing
     * allowance (within which the sanding allowance lies), and cut to the line afterwards. An opening may serve a member when it is within
     * the tolerance of what that member wants, and never below its finished diameter, as wood cut away does not come back. The opening is
     * as large as the group allows, what its greatest wants at most: so equal diameters get exactly what they want, and none that differs
     * by no more than the tolerance is left with less than the allowance.
     *
     * <p>Each diameter allows an interval of openings, all of one width, and the fewest points that meet every interval are found by taking
     * them in order and opening a new group at the first that the last group's point cannot meet: exact (the greedy rule for
     * interval stabbing, a textbook exercise; from memory). Comparisons give way by 1e-9 mm for rounding.
     *
     * @param diameters the finished diameters and whose they are
     * @param tolerance the job's diameter tolerance, not negative
     * @param sizingAllowance left on the diameter by the sizing cut, not negative
     */
    public static List<CaliperSetting> group(List<SizedDiameter> diameters, Length tolerance, Length sizingAllowance) {
        if (tolerance.mm() < 0 || sizingAllowance.mm() < 0) {
            throw new IllegalArgumentException(
                    "tolerance and sizing allowance must not be negative, were %s mm and %s mm"
                            .formatted(tolerance.mm(), sizingAllowance.mm()));
        }
        double above = tolerance.mm();
        double below = Math.min(tolerance.mm(), sizingAllowance.mm());
        List<SizedDiameter> rising = new ArrayList<>(diameters);
        rising.sort(Comparator.comparing(SizedDiameter::finished).thenComparing(SizedDiameter::member));
        List<CaliperSetting> settings = new ArrayList<>();
        int start = 0;
        while (start < rising.size()) {
            double least = rising.get(start).finished().mm();
            int end = start;
            while (end < rising.size() && rising.get(end).finished().mm() - least <= above + below + Spans.SLACK_MM) {
                end++;
            }
            settings.add(setting(rising.subList(start, end), tolerance, sizingAllowance));
            start = end;
        }
        return List.copyOf(settings);
    }

    private static CaliperSetting setting(List<SizedDiameter> group, Length tolerance, Length sizingAllowance) {
        double least = group.get(0).finished().mm();
        double greatest = group.get(group.size() - 1).finished().mm();
        Length finished = Length.ofMm(Math.min(greatest, least + tolerance.mm()));
        Length opening = finished.plus(sizingAllowance);
        List<Integer> members =
                group.stream().map(SizedDiameter::member).distinct().sorted().toList();
        Length left = Length.ofMm(Math.max(0, opening.mm() - greatest));
        return new CaliperSetting(opening, finished, left, members);
    }
}
