package turnalike.sheets;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import turnalike.drawing.svg.Svg;
import turnalike.job.set.SetMatch;
import turnalike.pattern.Pattern;
import turnalike.units.Length;

/** What is printed and handed out of a set in its places, whatever its frame. */
public final class SetSheets {
    private static final Length WIDTH = Length.ofMm(180);
    private static final Length CURVE_HEIGHT = Length.ofMm(110);

    private SetSheets() {}

    /**
     * The record of the set, to hang in the shop or hand over.
     *
     * @param date as it is to be printed; may be empty
     */
    public static Sheet record(String title, String date, SetMatch match, Pattern pattern, Paper paper) {
        SetPicture picture = SetPicture.of(match);
        SetRecordContent content = picture.record(title, date)
                .with(match.handWork().sentences())
                .with(match.otherWarnings())
                .first(match.unbuildable());
        Length width = paper.portrait().width().minus(Paper.MARGIN.times(2));
        // A wheel's plan stands beside its table; only pieces side by side are drawn again.
        Optional<Svg> frame = content.isRound() ? Optional.empty() : picture.frame(pattern, width);
        return SetRecord.of(content, frame, paper);
    }

    /** The pictures by themselves, by the name of their file. */
    public static Map<String, Svg> drawings(SetMatch match) {
        SetPicture picture = SetPicture.of(match);
        Map<String, Svg> out = new LinkedHashMap<>();
        out.put(picture.name() + ".svg", picture.places().svg(WIDTH));
        picture.curve(WIDTH, CURVE_HEIGHT).ifPresent(curve -> out.put("balance-and-roundness.svg", curve));
        return out;
    }
}
