package turnalike.cli.kit;

import java.util.Optional;
import picocli.CommandLine.Option;
import turnalike.units.UnitSystem;

/** Which paper a command sets its sheets on. */
public final class PaperOption {
    @Option(
            names = "--paper",
            paramLabel = "SIZE",
            description = "a4, letter or both; else letter for inches, A4 for millimetres.")
    private Optional<PaperChoice> paper = Optional.empty();

    /** The one asked for, else what is usual where those units are. */
    public PaperChoice orUsual(UnitSystem units) {
        return paper.orElse(PaperChoice.usual(units));
    }
}
