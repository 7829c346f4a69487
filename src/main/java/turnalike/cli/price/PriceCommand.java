package turnalike.cli.price;

import java.io.PrintWriter;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import turnalike.cli.kit.InputFiles;
import turnalike.cli.kit.OutputFolder;
import turnalike.cli.kit.PaperOption;
import turnalike.cli.kit.Today;
import turnalike.cli.kit.UserError;
import turnalike.cli.kit.WorkingsOption;
import turnalike.cli.kit.WrittenFiles;
import turnalike.cli.store.LoggedJob;
import turnalike.job.answer.PriceJson;
import turnalike.job.price.InvoiceFile;
import turnalike.job.price.LoggedTimes;
import turnalike.job.price.PriceReport;
import turnalike.job.price.TimesFile;
import turnalike.price.Charges;
import turnalike.sheets.Paper;
import turnalike.sheets.QuoteSheet;

@Command(
        name = "price",
        description = {
            "What the whole order takes, from the times of the pieces made so far, and what it comes to at your own rate.",
            "Times are those of the job, typed on its page, and with --store those that the bench view took; or of TIMES.csv, in their place.",
            "TIMES.csv needs the columns stage and minutes, a line for a piece in the order they were made; pieces, if a line is for several"
                    + " done in one go, or 0 for what is done once for the order."
        },
        footer = {
            "",
            "Example: turnalike price wheel.job.json --times times.csv --rate 45 --other wood=62.50 --out quote",
            "         turnalike price k3f9-a0bc-d1ef --store shop.db --rate 45"
        },
        mixinStandardHelpOptions = true)
public final class PriceCommand implements Runnable {
    @Parameters(index = "0", paramLabel = "JOB", description = "The job file (*.job.json), or the id of a kept job.")
    private String jobFile = "";

    @Mixin
    private LoggedJob source = new LoggedJob();

    @Option(names = "--times", paramLabel = "TIMES.csv", description = "What was timed (if left out: the job's own).")
    private Optional<Path> timesFile = Optional.empty();

    @Option(
            names = "--rate",
            paramLabel = "MONEY",
            description = "Your rate for an hour (if left out: the job's; without one times alone are told).")
    private Optional<String> rate = Optional.empty();

    @Option(
            names = "--other",
            paramLabel = "WHAT=MONEY",
            description =
                    "What you charge besides, for the whole order; may be given several times (if left out: what the job says).")
    private Map<String, String> others = new LinkedHashMap<>();

    @Option(
            names = "--markup",
            paramLabel = "PCT",
            description = "Per hundred on all of it, spread into the prices (if left out: the job's, else 0).")
    private Optional<String> markup = Optional.empty();

    @Option(
            names = "--tax",
            paramLabel = "PCT",
            description = "Per hundred, as you have to charge it (if left out: the job's, else 0).")
    private Optional<String> tax = Optional.empty();

    @Option(
            names = "--currency",
            paramLabel = "WORD",
            description = "Stands beside the figures (if left out: the job's).")
    private Optional<String> currency = Optional.empty();

    @Option(names = "--json", description = "Print one JSON object: minutes at full precision, money to a hundredth.")
    private boolean json;

    @Mixin
    private WorkingsOption workings = new WorkingsOption();

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Write the quote (PDF, SVG) and invoice.csv into this folder.")
    private Optional<Path> out = Optional.empty();

    @Mixin
    private PaperOption paper = new PaperOption();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        LoggedJob.Found found = source.find(jobFile);
        Charges charges = charges(found.job().shop().charges());
        PriceReport report = PriceReport.of(found.job(), times(found), charges);
        Optional<OutputFolder> folder = out.map(OutputFolder::new);
        folder.ifPresent(each -> write(report, each));
        PrintWriter console = spec.commandLine().getOut();
        if (json) {
            console.print(PriceJson.print(report));
        } else {
            console.print(PriceSummary.text(report, charges));
            workings.print(report.workings(), console);
            folder.ifPresent(each -> console.print(WrittenFiles.list(each.written())));
        }
        console.flush();
    }

    private LoggedTimes times(LoggedJob.Found found) {
        if (timesFile.isEmpty()) {
            LoggedTimes own =
                    LoggedTimes.of(found.job().shop().times(), found.log().turned());
            if (own.stages().isEmpty()) {
                throw UserError.of(
                        "--times", "nothing is timed yet", "name a table of times, or time a piece on the page");
            }
            return own;
        }
        TimesFile.Read times = TimesFile.parse(InputFiles.table(timesFile.get()));
        if (!times.problems().isEmpty()) {
            throw InputFiles.in(timesFile.get(), times.problems());
        }
        return LoggedTimes.of(times.stages(), Map.of());
    }

    /** As given here, and where nothing is, as the job says. */
    private Charges charges(Charges own) {
        Optional<BigDecimal> hourly =
                rate.map(text -> Amounts.money("--rate", text)).or(own::hourly);
        if (hourly.isEmpty() && (!others.isEmpty() || out.isPresent())) {
            throw UserError.of("--rate", "is missing", "give your rate for an hour, and a price is made");
        }
        List<Charges.Other> besides = others.entrySet().stream()
                .map(each -> new Charges.Other(
                        Amounts.word("--other", each.getKey()),
                        Amounts.money("--other " + each.getKey(), each.getValue())))
                .toList();
        return new Charges(
                hourly,
                besides.isEmpty() ? own.others() : besides,
                markup.map(text -> Amounts.percent("--markup", text)).orElse(own.markupPct()),
                tax.map(text -> Amounts.percent("--tax", text)).orElse(own.taxPct()),
                currency.filter(text -> !text.isEmpty())
                        .map(text -> Amounts.word("--currency", text))
                        .orElse(own.currency()));
    }

    private void write(PriceReport report, OutputFolder folder) {
        report.quote().ifPresent(quote -> folder.write("invoice.csv", InvoiceFile.text(quote)));
        for (Paper each : paper.orUsual(report.job().units()).papers()) {
            folder.write(QuoteSheet.of(report, Today.text(), each));
        }
    }
}
