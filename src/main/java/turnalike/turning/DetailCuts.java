package turnalike.turning;

import turnalike.pattern.Bead;
import turnalike.pattern.Cove;
import turnalike.pattern.Cylinder;
import turnalike.pattern.Fillet;
import turnalike.pattern.FreeCurve;
import turnalike.pattern.Groove;
import turnalike.pattern.HalfBead;
import turnalike.pattern.HalfCove;
import turnalike.pattern.Member;
import turnalike.pattern.Ogee;
import turnalike.pattern.ReverseOgee;
import turnalike.pattern.Square;
import turnalike.pattern.Swell;
import turnalike.pattern.Taper;
import turnalike.pattern.Tenon;
import turnalike.pattern.Vee;
import turnalike.settings.Wrenches;

/** With what, and how, each kind of member is cut. Common practice, no source. */
final class DetailCuts implements Member.Cases<DetailCuts.Way> {
    /**
     * How one member is cut.
     *
     * @param caution empty for none
     */
    record Way(Tool tool, String what, String caution) {}

    private static final String CATCH = "keep the bevel rubbing; a skew's upper point catches";

    @Override
    public Way square(Square square) {
        return new Way(Tool.SKEW, "leave square, arrises kept", "keep hands away from the turning corners");
    }

    @Override
    public Way cylinder(Cylinder cylinder) {
        return new Way(Tool.SKEW, "plane straight, from line to line", CATCH);
    }

    @Override
    public Way fillet(Fillet fillet) {
        return new Way(Tool.PARTING_TOOL, "cut the flat between its lines", "");
    }

    @Override
    public Way tenon(Tenon tenon) {
        String wrench = Wrenches.forHole(tenon.hole().orElse(tenon.diameter())).stream()
                .findFirst()
                .map(each -> ", then a shaving at a time until a %s wrench just drops over".formatted(each.name()))
                .orElse("");
        return new Way(
                Tool.PARTING_TOOL,
                "cut the tenon to the calipers, shoulder to end" + wrench,
                "stop the lathe before you try the wrench, and try the fit in a bored scrap of the same wood first");
    }

    @Override
    public Way taper(Taper taper) {
        return new Way(Tool.SKEW, "plane the taper, thick end to thin", CATCH);
    }

    @Override
    public Way swell(Swell swell) {
        return new Way(Tool.SKEW, "plane from the middle down to each end", CATCH);
    }

    @Override
    public Way bead(Bead bead) {
        return new Way(Tool.SKEW, "roll from the crown down to each line", CATCH);
    }

    @Override
    public Way halfBead(HalfBead bead) {
        return new Way(Tool.SKEW, "roll from the thick line down to the thin one", CATCH);
    }

    @Override
    public Way cove(Cove cove) {
        return new Way(
                Tool.SPINDLE_GOUGE,
                "scoop from each rim down to the bottom, and stop there",
                "never cut uphill past the bottom");
    }

    @Override
    public Way halfCove(HalfCove cove) {
        return new Way(Tool.SPINDLE_GOUGE, "scoop from the thick line down to the thin one", "");
    }

    @Override
    public Way ogee(Ogee ogee) {
        return new Way(Tool.SPINDLE_GOUGE, "cut the S from the thick line down to the thin one", "");
    }

    @Override
    public Way reverseOgee(ReverseOgee ogee) {
        return new Way(Tool.SPINDLE_GOUGE, "cut the S from the thick line down to the thin one", "");
    }

    @Override
    public Way vee(Vee vee) {
        return new Way(Tool.SKEW, "long point in the middle, then a light cut down each wall", CATCH);
    }

    @Override
    public Way groove(Groove groove) {
        return new Way(Tool.PARTING_TOOL, "straight in between its lines to the calipers", "");
    }

    @Override
    public Way freeCurve(FreeCurve curve) {
        return new Way(Tool.SPINDLE_GOUGE, "cut downhill along the curve, held to the template", "");
    }
}
