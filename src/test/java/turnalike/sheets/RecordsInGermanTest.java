package turnalike.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import turnalike.drawing.chart.Charts;
import turnalike.effort.Effort;
import turnalike.job.Job;
import turnalike.job.boards.BoardsFile;
import turnalike.job.boards.JobBlanks;
import turnalike.job.pieces.MatchJob;
import turnalike.job.price.LoggedTimes;
import turnalike.job.price.PriceReport;
import turnalike.job.price.TimesFile;
import turnalike.job.read.JobReader;
import turnalike.job.set.SetMatch;
import turnalike.language.Language;
import turnalike.language.Speech;
import turnalike.pieces.Piece;
import turnalike.pieces.PiecesFile;
import turnalike.pieces.control.RunRule;
import turnalike.price.Charges;
import turnalike.price.Timing;
import turnalike.units.UnitSystem;

/** What is handed over beside the sheets of a plan: records of sets, cut sheets, charts, squares for photographs. Each line has its German. */
class RecordsInGermanTest {
    private static final List<String> ORDERS = List.of(
            "job/good/wheel2",
            "job/good/row",
            "job/good/legs",
            "sheets/wheel24",
            "sheets/legs8",
            "sheets/orders/balusters",
            "sheets/orders/legs",
            "sheets/orders/wheel");

    @Test
    void no_line_of_any_record_lacks_its_german() {
        Set<String> missing = new TreeSet<>();
        for (String order : ORDERS) {
            Job job = job(order);
            for (Given given : Given.values()) {
                List<Piece> pieces = pieces(job, given);
                if (MatchJob.problems(job, pieces).isEmpty()) {
                    SetMatch set = MatchJob.of(job, pieces, given == Given.MASS, Effort.ofAsks(500));
                    missing.addAll(Speech.heardIn(
                            () -> SetSheets.record("New job", "2031-05-03", set, job.pattern(), Paper.A4)));
                }
            }
            missing.addAll(Speech.heardIn(() -> cut(job)));
        }
        missing.removeIf(Language.GERMAN::knows);
        assertThat(missing).isEmpty();
    }

    @Test
    void no_line_of_the_sheet_for_photographs_lacks_its_german() {
        Set<String> missing = Speech.heardIn(() -> PhotoSheets.of(2, Paper.A4));
        missing.removeIf(Language.GERMAN::knows);
        assertThat(missing).isEmpty();
    }

    @Test
    void no_line_of_a_chart_or_a_quote_lacks_its_german() {
        ControlSheet.Heading heading = new ControlSheet.Heading("New job", "2031-05-03", "g", "");
        Map<String, List<Timing>> times = TimesFile.parse(
                        "stage,minutes,pieces\nmilling,95,17\nturning,52,\nturning,44,\nturning,43,\nturning,40,\n")
                .stages();
        Charges charges = new Charges(
                Optional.of(new BigDecimal("45")),
                List.of(new Charges.Other("wood", new BigDecimal("62.50"))),
                BigDecimal.TEN,
                BigDecimal.TEN,
                "");
        PriceReport report = PriceReport.of(job("job/good/wheel2"), LoggedTimes.of(times, Map.of()), charges);
        Set<String> missing = Speech.heardIn(() -> {
            ControlSheet.of(Charts.spokes(24), heading, Paper.A4);
            ControlSheet.of(Charts.still(), heading, List.of("x"), Paper.A4);
            QuoteSheet.of(report, "2031-05-03", Paper.A4);
        });
        Stream.of(RunRule.values()).map(RunRule::words).forEach(missing::add);
        missing.removeIf(Language.GERMAN::knows);
        assertThat(missing).isEmpty();
    }

    /** What was found of the pieces. */
    private enum Given {
        MASS,
        COARSE,
        LENGTHS
    }

    private static Job job(String order) {
        try {
            String text = Files.readString(Path.of("src/test/resources/turnalike", order + ".job.json"))
                    .replaceAll("(\"(?:title|name)\"\\s*:\\s*)\"[^\"]*\"", "$1\"New job\"");
            return JobReader.read(text).job().orElseThrow();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static List<Piece> pieces(Job job, Given given) {
        Random random = new Random(31);
        double length = job.pattern().length().mm();
        StringBuilder csv = new StringBuilder(given == Given.LENGTHS ? "piece,mass_g,length\n" : "piece,mass_g\n");
        for (int i = 1; i <= job.count() + 3; i++) {
            double mass = 400 + 12 * random.nextGaussian();
            csv.append(i).append(',').append(given == Given.COARSE ? 5 * Math.round(mass / 5) : mass);
            csv.append(given == Given.LENGTHS ? "," + (length + 0.4 * random.nextGaussian()) + "\n" : "\n");
        }
        return PiecesFile.parse(csv.toString(), UnitSystem.METRIC).pieces();
    }

    private static void cut(Job job) {
        List<JobBlanks.Named> jobs = List.of(new JobBlanks.Named("x", "x", job));
        for (String boards : List.of("", "1,60 mm,210 mm,2450 mm,6,19.5,1100 mm,1150 mm\n")) {
            CutSheet.of(
                    jobs,
                    JobBlanks.plan(
                            jobs,
                            BoardsFile.read(
                                            "board,thickness,width,length,count,price,from1,to1\n" + boards,
                                            UnitSystem.METRIC)
                                    .boards(),
                            Effort.ofAsks(5_000)),
                    "2031-05-03",
                    Paper.A4);
        }
    }
}
