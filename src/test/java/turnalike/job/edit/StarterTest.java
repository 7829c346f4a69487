package turnalike.job.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import turnalike.job.kept.JobText;
import turnalike.pattern.Member;
import turnalike.pattern.Pattern;
import turnalike.units.Length;
import turnalike.units.Parsed;
import turnalike.units.UnitSystem;

class StarterTest {
    private static Length length(UnitSystem units, double count) {
        return units == UnitSystem.INCH ? Length.ofInches(count) : Length.ofMm(count);
    }

    private static Parsed<JobText> made(Starter starter, double length, double size, UnitSystem units) {
        return StarterJob.of(starter, length(units, length), length(units, size), units);
    }

    private static Pattern pattern(Parsed<JobText> made) {
        return made.get().job().pattern();
    }

    @Test
    void there_are_at_least_twelve_and_each_has_a_word_of_its_own() {
        Set<String> words = Stream.of(Starter.values()).map(Starter::word).collect(Collectors.toSet());
        assertThat(words).hasSize(Starter.values().length).hasSizeGreaterThanOrEqualTo(12);
        words.forEach(
                word -> assertThat(Starter.find(word).orElseThrow().word()).isEqualTo(word));
    }

    /** From a slender spindle to a post, in both units: a job that reads is one that can be built. */
    @ParameterizedTest
    @EnumSource(Starter.class)
    void each_is_as_long_as_asked_and_lies_within_its_blank(Starter starter) {
        for (UnitSystem units : UnitSystem.values()) {
            double unit = units == UnitSystem.INCH ? 1 : 25;
            for (double size : List.of(0.75, 1.0, 1.5, 1.75, 2.5, 4.0)) {
                for (double times : List.of(22.0, 16.37, starter.usualLength())) {
                    Parsed<JobText> made = made(starter, size * times * unit, size * unit, units);
                    Pattern pattern = pattern(made);
                    double step = units == UnitSystem.INCH ? 25.4 / 32 : 0.5;
                    assertThat(pattern.length().mm())
                            .isCloseTo(length(units, size * times * unit).mm(), within(step / 2 + 1e-9));
                    assertThat(made.get().job().pattern().stock().length().mm())
                            .isGreaterThan(pattern.length().mm() + 24);
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Starter.class)
    void a_longer_one_keeps_its_details(Starter starter) {
        List<Member> shorter =
                pattern(made(starter, 800, 40, UnitSystem.METRIC)).members();
        List<Member> longer =
                pattern(made(starter, 1000, 40, UnitSystem.METRIC)).members();
        for (int i = 0; i < shorter.size(); i++) {
            boolean isLong = starter.parts().get(i).share() > 0;
            assertThat(longer.get(i).equals(shorter.get(i))).isEqualTo(!isLong);
        }
    }

    @Test
    void what_cannot_hold_the_details_is_refused_with_the_least_that_can() {
        Parsed<JobText> shortened = made(Starter.VASE_BALUSTER, 6, 1.75, UnitSystem.INCH);
        assertThat(shortened).isInstanceOf(Parsed.Refused.class);
        String mend = shortened.fold(text -> "", (what, how) -> how);
        double least = Double.parseDouble(mend.replaceFirst("(?s)give from (\\d+).*", "$1"));
        assertThat(made(Starter.VASE_BALUSTER, least + 1, 1.75, UnitSystem.INCH))
                .isNotInstanceOf(Parsed.Refused.class);
        assertThat(made(Starter.VASE_BALUSTER, least - 1, 1.75, UnitSystem.INCH))
                .isInstanceOf(Parsed.Refused.class);
        assertThat(made(Starter.POST, 30, 0.25, UnitSystem.INCH)).isInstanceOf(Parsed.Refused.class);
        assertThat(made(Starter.POST, 30, 12, UnitSystem.INCH)).isInstanceOf(Parsed.Refused.class);
        assertThat(StarterJob.of(Starter.POST, Length.ofMm(3500), Length.ofMm(90), UnitSystem.METRIC))
                .isInstanceOf(Parsed.Refused.class);
    }
}
