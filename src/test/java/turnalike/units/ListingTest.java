package turnalike.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class ListingTest {
    @Test
    void the_first_few_are_named_and_the_rest_counted() {
        assertThat(Listing.of(List.of(), 2)).isEmpty();
        assertThat(Listing.of(List.of("3"), 2)).isEqualTo("3");
        assertThat(Listing.of(List.of("3", "7"), 2)).isEqualTo("3, 7");
        assertThat(Listing.of(List.of("3", "7", "12"), 2)).isEqualTo("3, 7 and 1 more");
    }
}
