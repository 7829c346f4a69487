package turnalike.trace.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import turnalike.pattern.Bead;
import turnalike.pattern.Cylinder;
import turnalike.pattern.Details;
import turnalike.pattern.Member;
import turnalike.pattern.Taper;
import turnalike.pattern.Tenon;
import turnalike.units.Length;

/** What a name at the end of a picture's run hangs on; all sizes made up. */
class EndNamesTest {
    private static final Details NONE = Details.NONE;

    private static Length mm(double mm) {
        return Length.ofMm(mm);
    }

    private final List<Part> parts = new ArrayList<>();
    private final List<Member> members = new ArrayList<>();

    private void add(Form form, double length, Member member) {
        double from = parts.isEmpty() ? 0 : parts.get(parts.size() - 1).toMm();
        parts.add(Part.of(form, from, from + length, form.sizes() == 1 ? List.of(9.0) : List.of(9.0, 12.0)));
        members.add(member);
    }

    private void edge(double length) {
        add(Form.STRAIGHT, length, new Taper(mm(length), mm(16), mm(18), NONE));
    }

    private void cylinder() {
        add(Form.LEVEL, 20, new Cylinder(mm(20), mm(18), NONE));
    }

    private void bead() {
        add(Form.HUMP, 12, new Bead(mm(12), mm(18), mm(24), NONE));
    }

    private boolean[] marked(int... unsure) {
        boolean[] marks = new boolean[parts.size()];
        for (int each : unsure) {
            marks[each] = true;
        }
        EndNames.mark(parts, members, marks);
        return marks;
    }

    @Test
    void what_is_no_longer_than_a_broken_edge_may_be_one() {
        edge(1.2);
        cylinder();
        bead();
        edge(7);
        assertThat(marked()).containsExactly(true, false, false, false);
    }

    @Test
    void a_level_at_an_end_is_as_sure_as_what_stands_beside_it() {
        edge(1.2);
        cylinder();
        bead();
        cylinder();
        assertThat(marked(2)).containsExactly(true, true, true, true);
    }

    @Test
    void a_tenon_is_told_by_its_own_shoulder() {
        add(Form.LEVEL, 5, new Tenon(mm(5), mm(18), mm(1), Optional.empty(), NONE));
        bead();
        cylinder();
        bead();
        assertThat(marked(1)).containsExactly(false, true, false, false);
    }

    @Test
    void one_member_alone_has_nothing_beside_it() {
        edge(5);
        assertThat(marked()).containsExactly(false);
    }
}
