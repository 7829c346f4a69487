package turnalike.trace.drawn;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import turnalike.units.Problem;

/** Reads the outlines of an SVG file: paths and all shapes, wherever groups, clones and transforms put them. */
final class SvgDrawing {
    private static final Set<String> UNDRAWN =
            Set.of("defs", "clippath", "mask", "symbol", "pattern", "marker", "text", "style", "metadata", "title");
    /** Clones of clones of clones; a drawing that goes deeper, or draws more elements than so many, is none of a piece. */
    private static final int DEEPEST_CLONES = 20;

    private static final int MOST_ELEMENTS = 200_000;

    private static final Pattern ENTITY = Pattern.compile("<!ENTITY\\s+(\\w+)");

    private final List<Stroke> strokes = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private final Map<String, SvgNode> named = new HashMap<>();
    /** The clones that what is drawn now lies in. */
    private final Deque<SvgNode> clones = new ArrayDeque<>();

    private Optional<Problem> problem = Optional.empty();
    private Optional<Double> axisY = Optional.empty();
    private double mmPerUnit = SvgSizes.MM_PER_PX;
    private String from = "pixels of 1/96 in, since the drawing names no unit";
    private boolean isTold;
    private boolean isSvg;
    private int drawn;

    private SvgDrawing() {}

    static Drawing read(String text) {
        SvgNode.Read read = SvgNode.read(text);
        if (read.file().isPresent()) {
            return new SvgDrawing().drawing(read.file().get());
        }
        String where = "line " + read.badLine();
        return usesEntities(text)
                ? Drawing.none(
                        where,
                        "uses words that its document type defines (entities), which are not read",
                        "export the drawing as plain SVG")
                : Drawing.none(where, "is not XML there", "export the drawing as SVG once more");
    }

    private static boolean usesEntities(String text) {
        Matcher defined = ENTITY.matcher(text);
        return defined.find() && text.contains("&" + defined.group(1) + ";");
    }

    private Drawing drawing(SvgNode file) {
        name(file);
        file.children().forEach(each -> draw(each, Affine.NONE));
        if (!isSvg) {
            return Drawing.none("drawing", "is no SVG", "export it as SVG or DXF");
        }
        return new Drawing(strokes, mmPerUnit, from, isTold, axisY, notes, problem);
    }

    private void name(SvgNode node) {
        if (!node.get("id").isEmpty()) {
            named.putIfAbsent(node.get("id"), node);
        }
        node.children().forEach(this::name);
    }

    private void draw(SvgNode node, Affine outside) {
        boolean hidden = node.styled("display").equals("none");
        if (UNDRAWN.contains(node.name()) || hidden || problem.isPresent()) {
            return;
        }
        if (++drawn > MOST_ELEMENTS) {
            refuse(node, "draws more than %d elements".formatted(MOST_ELEMENTS), "draw one piece alone");
            return;
        }
        Affine here = outside.after(transform(node));
        if (node.name().equals("svg")) {
            here = isSvg ? here.after(nested(node, node)) : root(node);
            isSvg = true;
        }
        axis(node, here);
        element(node, here);
        for (SvgNode each : node.children()) {
            draw(each, here);
        }
    }

    private void refuse(SvgNode node, String what, String mend) {
        problem = problem.or(() -> Optional.of(new Problem("line " + node.line(), what, mend)));
    }

    private Affine transform(SvgNode node) {
        String text = node.styled("transform");
        String about = node.styled("transform-origin");
        Optional<Affine> read = Affine.parse(text);
        boolean isMoved = !text.isBlank() && !text.equals("none");
        boolean elsewhere = isMoved && !about.isEmpty() && !about.matches("0(px|%)?( 0(px|%)?)?( 0(px)?)?");
        if (read.isEmpty() || elsewhere) {
            refuse(
                    node,
                    "has a transform that is not read: '%s'".formatted(elsewhere ? "transform-origin: " + about : text),
                    "apply the transform to the outline in the drawing program, and export it once more");
        }
        return read.orElse(Affine.NONE);
    }

    private void axis(SvgNode node, Affine here) {
        double axis = node.number("data-axis");
        if (!Double.isNaN(axis)) {
            axisY = Optional.of(here.of(Spot.knot(0, axis)).y());
        }
    }

    private void element(SvgNode node, Affine here) {
        switch (node.name()) {
            case "path" -> path(node, here);
            case "polygon" -> add(SvgShapes.polygon(SvgSizes.numbers(node.get("points")), true), here);
            case "polyline" -> add(SvgShapes.polygon(SvgSizes.numbers(node.get("points")), false), here);
            case "line" -> add(SvgShapes.line(node), here);
            case "rect" -> add(SvgShapes.rectangle(node), here);
            case "circle" -> add(SvgShapes.ellipse(node, node.number("r"), node.number("r")), here);
            case "ellipse" -> add(SvgShapes.ellipse(node, node.number("rx"), node.number("ry")), here);
            case "use" -> use(node, here);
            default -> {
                // Neither a line nor anything that holds one.
            }
        }
    }

    private void add(Optional<Stroke> stroke, Affine here) {
        stroke.ifPresent(each -> strokes.add(here.of(each)));
    }

    private void path(SvgNode node, Affine here) {
        SvgPath path = SvgPath.of(node.get("d"), "");
        path.strokes().forEach(each -> strokes.add(here.of(each)));
        if (path.hasMistake()) {
            String name = node.get("id").isEmpty() ? "" : " '%s'".formatted(node.get("id"));
            notes.add("Line %d: the path%s was read only up to a mistake in it, at '%s'."
                    .formatted(node.line(), name, path.near()));
        }
    }

    /** What it names, put where it says. One that would draw itself draws nothing. */
    private void use(SvgNode node, Affine here) {
        String link = node.get("href");
        SvgNode what = link.startsWith("#") ? named.get(link.substring(1)) : null;
        if (what == null || clones.contains(what) || clones.size() >= DEEPEST_CLONES) {
            notes.add("Line %d: the clone of '%s' was left out: it is not in the drawing, or holds itself."
                    .formatted(node.line(), link));
            return;
        }
        clones.addLast(what);
        Affine at = here.after(Affine.shift(node.number("x", 0), node.number("y", 0)));
        if (what.name().equals("symbol")) {
            Affine in = at.after(transform(what)).after(nested(what, node));
            what.children().forEach(each -> draw(each, in));
        } else {
            draw(what, at);
        }
        clones.removeLast();
    }

    /**
     * Where what lies in a drawing within the drawing is put.
     *
     * @param sized the element that says how large it is to be
     */
    private Affine nested(SvgNode node, SvgNode sized) {
        double[] box = SvgSizes.numbers(node.get("viewBox"));
        boolean isSelf = node.equals(sized);
        Affine at = Affine.shift(isSelf ? node.number("x", 0) : 0, isSelf ? node.number("y", 0) : 0);
        if (!SvgView.isBox(box)) {
            return at;
        }
        double wide = sized.number("width");
        double high = sized.number("height");
        if (!(wide > 0 || high > 0)) {
            refuse(
                    node,
                    "has a view box of its own and no size in the drawing's units",
                    "unlink clones and symbols in the drawing program, and export it once more");
            return at;
        }
        return at.after(
                SvgView.of(box, wide, high, node.get("preserveAspectRatio")).place());
    }

    /** How large its unit is; and whether it is stretched one way. */
    private Affine root(SvgNode node) {
        double[] box = SvgSizes.numbers(node.get("viewBox"));
        double width = SvgSizes.mm(node.get("width"));
        double height = SvgSizes.mm(node.get("height"));
        boolean viewed = SvgView.isBox(box);
        if (width <= 0 || height <= 0 || (box.length > 0 && !viewed)) {
            refuse(
                    node,
                    "has a size or a view box that is not above zero: nothing of it shows",
                    "set the page's size in the drawing program, and export it once more");
        }
        Affine stretched = Affine.NONE;
        if (viewed && (width > 0 || height > 0)) {
            SvgView view = SvgView.of(box, width, height, node.get("preserveAspectRatio"));
            mmPerUnit = Math.min(view.across(), view.down());
            stretched = new Affine(view.across() / mmPerUnit, 0, 0, view.down() / mmPerUnit, 0, 0);
            from = "the drawing's own size and view box";
        }
        String unit = SvgSizes.unit(node.get("width")) + SvgSizes.unit(node.get("height"));
        isTold = (width > 0 || height > 0) && !unit.isEmpty() && !unit.contains("px");
        if (!viewed) {
            from = "pixels of 1/96 in";
        } else if (!isTold && width > 0) {
            from = "the drawing's size in pixels of 1/96 in";
        }
        return stretched.after(transform(node));
    }
}
