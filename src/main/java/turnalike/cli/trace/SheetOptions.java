package turnalike.cli.trace;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.BiFunction;
import picocli.CommandLine.Option;
import turnalike.cli.kit.OutputFolder;
import turnalike.cli.kit.PaperChoice;
import turnalike.cli.kit.UserError;
import turnalike.cli.kit.WrittenFiles;
import turnalike.photo.PhotoWish;
import turnalike.photo.SheetSquares;
import turnalike.sheets.Paper;
import turnalike.sheets.PhotoSheets;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** The printed sheet: to print it, and what to say of one that lies in a photograph. */
final class SheetOptions {
    private static final int USUAL_PAGES = 3;

    @Option(
            names = "--sheet",
            description =
                    "Write the sheet of numbered squares to lay under or beside a piece, into the folder of --out: then its photograph needs no --span.")
    private boolean sheet;

    @Option(
            names = "--pages",
            paramLabel = "N",
            description =
                    "How many pages of it, 1 to 20, to lay in a row: the piece and a hand's breadth more (default 3).")
    private Optional<Integer> pages = Optional.empty();

    @Option(
            names = "--paper",
            paramLabel = "PAPER",
            description = "a4, letter or both (default a4; with --units in, letter).")
    private Optional<PaperChoice> paper = Optional.empty();

    @Option(
            names = "--bar",
            paramLabel = "LENGTH",
            description = "How long the bar of 100 mm on the sheet in the photograph really is, laid on a rule.")
    private Optional<String> bar = Optional.empty();

    @Option(
            names = "--height",
            paramLabel = "LENGTH",
            description =
                    "How high the piece's axis stands above the sheet, level; left out for a piece that lies on it or beside it.")
    private Optional<String> height = Optional.empty();

    boolean isAskedFor() {
        return sheet;
    }

    /** What is known of the sheet in a photograph; each length read by its text and the option's name. */
    PhotoWish.OnSheet known(BiFunction<String, String, Length> length) {
        pages.ifPresent(count -> refuse("--pages"));
        paper.ifPresent(choice -> refuse("--paper"));
        Optional<Length> printed = bar.map(text -> length.apply("--bar", text));
        printed.filter(each -> each.mm() < 50 || each.mm() > 200).ifPresent(each -> {
            throw UserError.of(
                    "--bar",
                    "was %s for a bar of 100 mm".formatted(each.formatFineBoth(UnitSystem.METRIC)),
                    "give what a rule says of the upper bar, the one marked 100 mm");
        });
        return new PhotoWish.OnSheet(printed, height.map(text -> length.apply("--height", text)), Optional.empty());
    }

    private static void refuse(String option) {
        throw UserError.of(option, "goes with --sheet, which prints it", "leave it out for a photograph");
    }

    /** Writes it; what there is to say. */
    String write(Optional<Path> source, Optional<Path> out, Optional<UnitSystem> units) {
        source.ifPresent(each -> {
            throw UserError.of("--sheet", "prints the sheet and traces nothing", "leave %s out".formatted(each));
        });
        int count = pages.orElse(USUAL_PAGES);
        if (count < 1 || count > SheetSquares.MOST_PAGES) {
            throw UserError.of(
                    "--pages",
                    "was %d".formatted(count),
                    "give 1 to %d; a row of three is some 850 mm, 33 in, long".formatted(SheetSquares.MOST_PAGES));
        }
        OutputFolder folder = new OutputFolder(out.orElseThrow(
                () -> UserError.of("--sheet", "has no folder to be written into", "name one with --out")));
        PaperChoice choice = paper.orElse(PaperChoice.usual(units.orElse(UnitSystem.METRIC)));
        for (Paper each : choice.papers()) {
            folder.write(PhotoSheets.of(count, each));
        }
        return WrittenFiles.text(folder.written());
    }
}
