package turnalike.job.original;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import turnalike.drawing.dxf.PieceDxf;
import turnalike.job.read.JobReader;
import turnalike.pattern.Member;
import turnalike.pattern.Pattern;
import turnalike.trace.Snap;
import turnalike.trace.TracedMember;
import turnalike.trace.drawn.DrawnOutline;
import turnalike.units.UnitSystem;

/** A pattern that goes out as a drawing comes back as the same members. */
class DrawnMembersTest {
    /** Of a joint between two that run on into one another; the drawing's own chords stray by 0.005 mm. */
    private static final double JOINT_MM = 0.02;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "main/resources/turnalike/demo/fair-wheel",
                "test/resources/turnalike/job/good/post",
                "test/resources/turnalike/sheets/orders/balusters",
                "test/resources/turnalike/sheets/orders/legs"
            })
    void a_pattern_out_as_dxf_comes_back_as_the_same_members(String job) throws IOException {
        Pattern pattern = JobReader.read(Files.readString(Path.of("src", job + ".job.json")))
                .job()
                .orElseThrow()
                .pattern();
        OriginalWish wish = OriginalWish.of(UnitSystem.METRIC, Optional.empty(), Optional.empty(), Snap.NONE);
        List<TracedMember> found = OriginalTrace.drawing(PieceDxf.outline(pattern), DrawnOutline.Format.DXF, wish)
                .traced()
                .orElseThrow()
                .run()
                .members();
        assertThat(found.stream().map(each -> word(each.member())))
                .isEqualTo(
                        pattern.members().stream().map(DrawnMembersTest::word).toList());
        for (int i = 0; i < found.size(); i++) {
            assertThat(found.get(i).member().length().mm())
                    .as(word(found.get(i).member()))
                    .isCloseTo(pattern.members().get(i).length().mm(), within(JOINT_MM));
        }
    }

    /** A drawing does not tell what was left square, and between shoulders a fillet is a cylinder. */
    private static String word(Member member) {
        String word = member.kind().word();
        return word.equals("square") ? "cylinder" : word;
    }
}
