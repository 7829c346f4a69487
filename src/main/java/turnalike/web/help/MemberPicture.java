package turnalike.web.help;

import java.util.ArrayList;
import java.util.List;
import turnalike.drawing.piece.ShadedSpindle;
import turnalike.outline.Outline;
import turnalike.outline.Section;
import turnalike.pattern.Cylinder;
import turnalike.pattern.Details;
import turnalike.pattern.Member;
import turnalike.pattern.MemberKind;
import turnalike.pattern.Pattern;
import turnalike.pattern.Stock;
import turnalike.units.Article;
import turnalike.units.Length;

/**
 * A kind of member with its picture, between two cylinders.
 *
 * @param kind the kind
 * @param picture the drawing
 */
public record MemberPicture(MemberKind kind, String picture) {
    private static final Length BESIDE = Length.ofMm(30);

    static MemberPicture of(MemberKind kind) {
        String title = Article.with(kind.word()) + " between two cylinders";
        String picture = ShadedSpindle.svg(between(kind.example()).outline(), title, Length.ofMm(56), Length.ofMm(40))
                .inline();
        return new MemberPicture(kind, picture);
    }

    /** What enters a hole stands at the end; what steps from one diameter to another is followed by a cylinder of that other. */
    private static Pattern between(Member example) {
        Outline outline = Outline.of(Length.ZERO, example.curves(Member.Ends.NEITHER), example.section());
        Length step = outline.endRadius().minus(outline.startRadius()).times(2);
        List<Member> run = new ArrayList<>(List.of(cylinder(BESIDE), example));
        if (example.enters().isEmpty()) {
            run.add(cylinder(BESIDE.plus(step)));
        }
        return new Pattern("", new Stock(Section.SQUARE, Length.ofMm(42), Length.ofMm(90)), run);
    }

    private static Cylinder cylinder(Length diameter) {
        return new Cylinder(Length.ofMm(12), diameter, Details.NONE);
    }
}
