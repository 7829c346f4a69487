package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import turnalike.trace.Profile;
import turnalike.units.Length;

/** What is looked at again where a picture would be refused, and how far that may go. */
class SecondLookTest {
    private static final int WIDTH = 300;

    private static final int HEIGHT = 200;

    private static final int LONG = 200;

    private static CoarsePicture bar() {
        SplittableRandom dice = new SplittableRandom(5);
        byte[] data = new byte[3 * WIDTH * HEIGHT];
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                boolean in = x >= 50 && x < 50 + LONG && Math.abs(y - HEIGHT / 2) < 14;
                int[] codes = in ? new int[] {170, 120, 80} : new int[] {120, 124, 130};
                for (int c = 0; c < 3; c++) {
                    data[3 * (y * WIDTH + x) + c] = (byte) Math.round(codes[c] + dice.nextGaussian());
                }
            }
        }
        return CoarsePicture.of(Picture.of(data, WIDTH, HEIGHT));
    }

    private static PhotoTrace.Traced traced() {
        Profile.Station station = new Profile.Station(Length.ofMm(0), Length.ofMm(3), Length.ofMm(0.1));
        Profile profile = new Profile(
                Length.ofMm(10),
                List.of(station, new Profile.Station(Length.ofMm(10), Length.ofMm(3), Length.ofMm(0.1))),
                List.of());
        PixelPoint point = new PixelPoint(1, 1);
        PhotoTrace.Overlay lies = new PhotoTrace.Overlay(WIDTH, HEIGHT, point, point, List.of(point), List.of(point));
        return new PhotoTrace.Traced(profile, profile, List.of(), 0.3, "scale", "view", lies, List.of());
    }

    private static Unsure refusal(PhotoTrace.Reason reason) {
        return new Unsure(reason, "what", "mend");
    }

    private static double length(BodySearch.Found found) {
        return found.body().to() - found.body().from();
    }

    @Test
    void in_less_grain_nothing_counts_that_is_much_shorter_than_what_was_found() throws Unsure {
        CoarsePicture picture = bar();
        List<Double> asked = new ArrayList<>();
        SecondLook.Search search = () -> BodySearch.find(picture, Optional.empty(), Optional.empty());
        PhotoTrace.Traced small = traced();
        PhotoTrace trace = SecondLook.trace(
                picture,
                search,
                (found, care) -> {
                    throw refusal(PhotoTrace.Reason.LIKE_GROUND);
                },
                least -> {
                    asked.add(least);
                    return Optional.of(small);
                });
        assertThat(trace).isSameAs(small);
        assertThat(asked).hasSize(1);
        assertThat(asked.get(0)).isCloseTo(0.7 * LONG, within(4.0));
        assertThat(SecondLook.shortly(picture, 0.9 * LONG, (found, care) -> small))
                .contains(small);
        assertThat(SecondLook.shortly(picture, 1.1 * LONG, (found, care) -> small))
                .isEmpty();
    }

    @Test
    void what_no_other_look_mends_is_not_looked_at_in_less_grain() {
        SecondLook.Search dark = () -> {
            throw refusal(PhotoTrace.Reason.TOO_DARK);
        };
        PhotoTrace.Traced small = traced();
        assertThatThrownBy(() -> SecondLook.trace(bar(), dark, (found, care) -> small, least -> Optional.of(small)))
                .isInstanceOf(Unsure.class);
    }

    /** As where something of the piece's hue touches it. */
    @Test
    void what_is_refused_as_hue_found_it_is_looked_for_by_light() throws Unsure {
        CoarsePicture picture = BodyFinderTest.stained();
        List<BodySearch.Found> asked = new ArrayList<>();
        SecondLook.Search search = () -> BodySearch.find(picture, Optional.empty(), Optional.empty());
        PhotoTrace trace = SecondLook.trace(
                picture,
                search,
                (found, care) -> {
                    asked.add(found);
                    if (care == Care.BOTH_SIDES) {
                        return traced();
                    }
                    throw refusal(PhotoTrace.Reason.LIKE_GROUND);
                },
                least -> Optional.empty());
        assertThat(trace).isInstanceOf(PhotoTrace.Traced.class);
        assertThat(asked).hasSize(1);
        assertThat(length(asked.get(0))).isCloseTo(BodyFinderTest.LONG, within(6.0));
    }
}
