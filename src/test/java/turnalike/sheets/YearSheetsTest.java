package turnalike.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.job.InventedLeg;
import turnalike.job.Plan;
import turnalike.job.read.JobReader;

class YearSheetsTest {
    private static Plan plan(String wood) {
        String text = InventedLeg.text("\"home\": {\"dry_pct\": 6, \"damp_pct\": 12},", ", \"hole\": 20")
                .replace("{\"density_kg_m3\": 700}", wood);
        return Plan.of(JobReader.read(text).job().orElseThrow(), Effort.unlimited());
    }

    @Test
    void the_sheet_has_each_joint_with_its_figures_and_the_caution() throws Exception {
        Plan plan = plan("{\"species\": \"White ash\", \"moisture_pct\": 8}");
        assertThat(PlanSheet.of(plan)).contains(PlanSheet.JOINTS);
        Sheet sheet = PlanSheet.JOINTS.of(plan, Paper.A4);
        try (var pdf = Loader.loadPDF(sheet.pdf())) {
            String text = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
            assertThat(text).contains("1 tenon in the hole", "6 foot in the hole", "tightest when damp: 0.22 mm");
            assertThat(text).contains("hole across its grain", "Trust a trial joint before these figures");
        }
    }

    @Test
    void a_job_without_a_home_or_without_a_known_wood_has_none() {
        assertThat(PlanSheet.of(InventedLeg.plan("", ""))).doesNotContain(PlanSheet.JOINTS);
        assertThat(PlanSheet.of(plan("{\"density_kg_m3\": 650}"))).doesNotContain(PlanSheet.JOINTS);
    }
}
