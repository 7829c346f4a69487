package turnalike.cli.kit;

import java.util.List;
import turnalike.sheets.Paper;
import turnalike.units.UnitSystem;

/** Which paper the sheets are set on. */
public enum PaperChoice {
    A4,
    LETTER,
    BOTH;

    public List<Paper> papers() {
        return switch (this) {
            case A4 -> List.of(Paper.A4);
            case LETTER -> List.of(Paper.LETTER);
            case BOTH -> List.of(Paper.A4, Paper.LETTER);
        };
    }

    /** The paper usual where those units are. */
    public static PaperChoice usual(UnitSystem units) {
        return units == UnitSystem.INCH ? LETTER : A4;
    }
}
