package turnalike.turning;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import turnalike.pattern.PlacedMember;
import turnalike.units.Length;

/**
 * Which sizing cuts wait, between centres, until their member's turn comes: those of slender members down to less than the share of the
 * thickest turned part from which a member is slender ({@link SlenderRules#thin}). A slot a tool wide is as weak as the neck it begins, and
 * the heavy details, where there are any, are cut while the piece is stout. A detail's own roots do not wait: it is rolled down into them; nor does a short flat
 * beside it of the same size, in which it is parted. Common practice, no source.
 */
final class LateSizing {
    /** A flat of no more than so many widths of the parting tool is where the detail beside it is parted. */
    private static final int SHORT = 3;

    private final TurningProblem work;
    private final List<PlacedMember> run;
    private final List<SizedPlace> sized;
    private final Set<Integer> slender;
    private final Length thin;

    LateSizing(TurningProblem work, Set<Integer> slender) {
        this.work = work;
        this.run = work.pattern().placed();
        this.sized = SizedPlace.of(work);
        this.slender = Set.copyOf(slender);
        this.thin =
                work.thickestRound().times(2 * work.lathe().rules().slender().thin());
    }

    boolean waits(SizedPlace place) {
        return !work.held().byOneEnd()
                && IntStream.range(0, run.size()).anyMatch(this::isDetail)
                && slender.contains(place.member())
                && place.setting().finished().compareTo(thin) < 0
                && !isPartedForDetail(place);
    }

    private boolean isPartedForDetail(SizedPlace place) {
        PlacedMember flat = run.get(place.member());
        Length most = work.lathe().rules().parting().times(SHORT);
        return flat.diameters().size() == 1
                && flat.member().length().compareTo(most) <= 0
                && IntStream.of(place.member() - 1, place.member() + 1)
                        .filter(this::isDetail)
                        .anyMatch(each -> meets(each, place));
    }

    private boolean isDetail(int index) {
        return index >= 0 && index < run.size() && run.get(index).member().isShaped() && !slender.contains(index);
    }

    private boolean meets(int detail, SizedPlace place) {
        double joint = run.get(Math.max(detail, place.member())).start().mm();
        return sized.stream()
                .anyMatch(each -> each.member() == detail
                        && each.setting().equals(place.setting())
                        && Math.abs(each.place().mm() - joint) < 1e-6);
    }
}
