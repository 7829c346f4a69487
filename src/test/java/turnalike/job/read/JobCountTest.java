package turnalike.job.read;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class JobCountTest {
    private static int count(String rest) {
        return JobReader.read("""
                        {"format": "turnalike-job", "version": 1, "units": "mm",
                         "pattern": {"stock": {"section": "round", "size": 30, "length": 100},
                          "members": [{"kind": "cylinder", "length": 90, "diameter": 25}]},
                         "wood": {"density_kg_m3": 600}%s}
                        """.formatted(rest)).job().orElseThrow().count();
    }

    @Test
    void a_job_without_a_count_makes_what_its_frame_takes() {
        assertThat(count("")).isEqualTo(1);
        assertThat(count(", \"frame\": {\"kind\": \"row\", \"places\": 7}")).isEqualTo(7);
        assertThat(count(", \"frame\": {\"kind\": \"legs\", \"places\": 4, \"groups\": 3}"))
                .isEqualTo(12);
        assertThat(count(", \"count\": 5, \"frame\": {\"kind\": \"row\", \"places\": 7}"))
                .isEqualTo(5);
    }
}
