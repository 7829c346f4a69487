package turnalike.web.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import turnalike.job.edit.Written;
import turnalike.job.kept.JobText;
import turnalike.units.UnitSystem;
import turnalike.web.job.FieldView.Look;
import turnalike.wood.Species;
import turnalike.wood.Woods;

/** The form of what is outside the run, in groups. */
public final class JobForm {
    /**
     * Fields that belong together.
     *
     * @param title of the group
     * @param fields in the order a person fills them in
     */
    public record Group(String title, List<FieldView> fields) {
        public Group {
            fields = List.copyOf(fields);
        }
    }

    private record Section(String title, List<Row> rows) {}

    private record Row(String name, String label, Look look, String hint) {}

    private static final String PARTED = "parted by semicolons";

    private static final List<Section> SECTIONS = List.of(
            new Section(
                    "Order",
                    List.of(
                            new Row("title", "Title", Look.TEXT, ""),
                            new Row("pattern.name", "Pattern", Look.TEXT, "left empty: the title"),
                            new Row("count", "Good pieces wanted", Look.NUMBER, ""),
                            new Row("loss_pct", "Blanks lost, %", Look.NUMBER, "left empty: the usual share"))),
            new Section(
                    "Stock and wood",
                    List.of(
                            new Row("pattern.stock.section", "Section", Look.CHOICE, ""),
                            new Row("pattern.stock.size", "Across", Look.LENGTH, ""),
                            new Row("pattern.stock.length", "Length", Look.LENGTH, ""),
                            new Row("wood.species", "Species", Look.TEXT, ""),
                            new Row("wood.moisture_pct", "Moisture, %", Look.NUMBER, "left empty: 8"),
                            new Row("wood.density_kg_m3", "Or density, kg/m³", Look.NUMBER, "in place of a species"))),
            new Section(
                    "Tolerances",
                    List.of(
                            new Row("tolerances.mark", "A mark, each step", Look.LENGTH, "left empty: 0.25 mm"),
                            new Row("tolerances.diameter", "A diameter", Look.LENGTH, "left empty: 0.4 mm"),
                            new Row("tolerances.mass_pct", "Weights of a set, %", Look.NUMBER, "left empty: 2"),
                            new Row("tolerances.scale_g", "The scale shows, g", Look.NUMBER, "left empty: 0.1"),
                            new Row(
                                    "tolerances.mark_limit",
                                    "What a mark may collect",
                                    Look.LENGTH,
                                    "left empty: three steps"))),
            new Section(
                    "Allowances",
                    List.of(
                            new Row("allowances.sizing", "Sized over by", Look.LENGTH, "left empty: none"),
                            new Row("allowances.sanding", "Sanding takes", Look.LENGTH, "left empty: none"),
                            new Row("allowances.milling", "Milling, each face", Look.LENGTH, "left empty: the usual"),
                            new Row(
                                    "allowances.trimming",
                                    "Trimming, each end",
                                    Look.LENGTH,
                                    "left empty: the usual"))),
            new Section(
                    "Your choice of settings",
                    List.of(
                            new Row("settings.pin", "Openings you have set", Look.TEXT, PARTED + ": 1 1/4; 3"),
                            new Row("settings.forbid", "Openings not to use", Look.TEXT, PARTED),
                            new Row("settings.stick", "Marks from the stick", Look.TEXT, "numbers of marks, " + PARTED),
                            new Row(
                                    "settings.stick_marks",
                                    "The stick is marked by",
                                    Look.CHOICE,
                                    "left empty: lines"))),
            new Section(
                    "Turning",
                    List.of(
                            new Row(
                                    "turning.speeds",
                                    "Your lathe's speeds, rpm",
                                    Look.TEXT,
                                    PARTED + ": 500; 900; 1500"),
                            new Row("turning.max_rpm", "Lathe's fastest, rpm", Look.NUMBER, "left empty: any"),
                            new Row(
                                    "turning.force_n",
                                    "Tool pushes with, N",
                                    Look.NUMBER,
                                    "left empty: 20, a light cut"),
                            new Row("turning.tailstock_force_n", "Tailstock presses with, N", Look.NUMBER, ""),
                            new Row(
                                    "wood.moe_mpa",
                                    "Wood's stiffness, MPa",
                                    Look.NUMBER,
                                    "left empty: the handbook's"))),
            new Section(
                    "How alike",
                    List.of(
                            new Row(
                                    "checks",
                                    "Where a caliper is laid",
                                    Look.LINES,
                                    "a line each: name ; place from the head end"),
                            new Row("likeness.length", "Lengths and marks count", Look.NUMBER, "left empty: 3"),
                            new Row("likeness.diameter", "Diameters count", Look.NUMBER, "left empty: 2"),
                            new Row("likeness.mass", "Weights count", Look.NUMBER, "left empty: 1"),
                            new Row(
                                    "likeness.noted",
                                    "Judged by eye, and what a grade counts",
                                    Look.LINES,
                                    "a line each: colour ; 0.5"))),
            new Section(
                    "Frame",
                    List.of(
                            new Row("frame.kind", "Goes into", Look.CHOICE, "left empty: no frame"),
                            new Row("frame.places", "Places", Look.NUMBER, "of a wheel, a row, or one group of legs"),
                            new Row("frame.groups", "Groups of legs", Look.NUMBER, ""),
                            new Row("frame.hub_radius", "Hub radius", Look.LENGTH, "a wheel's; to the shoulder"),
                            new Row("frame.tenon_at", "End in the hub", Look.CHOICE, ""),
                            new Row("frame.counterweight_radius", "Counterweight radius", Look.LENGTH, ""),
                            new Row("frame.rpm", "Will turn at, rpm", Look.NUMBER, "for information"),
                            new Row("frame.seen_from", "Seen from", Look.CHOICE, "left empty: the start"))),
            new Section(
                    "The bare wheel",
                    List.of(
                            new Row(
                                    "frame.seat_depths",
                                    "Seats too deep by",
                                    Look.TEXT,
                                    "one for each place, " + PARTED),
                            new Row(
                                    "frame.given_moments",
                                    "Bare wheel pulls, g·mm ; at degrees",
                                    Look.LINES,
                                    "a line each: 1200 ; 90"),
                            new Row(
                                    "frame.rocking.period_s",
                                    "Rocking: there and back in, s",
                                    Look.NUMBER,
                                    "time ten swings"),
                            new Row("frame.rocking.rests_at_deg", "Rocking: it rests at, degrees", Look.NUMBER, ""),
                            new Row(
                                    "frame.rocking.amplitude_deg",
                                    "Rocking: pushed by, degrees",
                                    Look.NUMBER,
                                    "left empty: 0"),
                            new Row("frame.rocking.rim_mass_g", "Rocking: the rim weighs, g", Look.NUMBER, ""),
                            new Row("frame.rocking.rim_radius", "Rocking: the rim's radius", Look.LENGTH, ""),
                            new Row(
                                    "frame.rocking.inertia_g_mm2",
                                    "Rocking: or its inertia, g·mm²",
                                    Look.NUMBER,
                                    "in place of the rim"))));

    /** What may be sent; anything else is passed over. */
    static final Set<String> FIELDS = SECTIONS.stream()
            .flatMap(section -> section.rows().stream())
            .map(Row::name)
            .collect(Collectors.toUnmodifiableSet());

    private static final Map<String, List<String>> CHOICES = Map.of(
            "pattern.stock.section", List.of("square", "round"),
            "frame.kind", List.of("", "wheel", "row", "legs"),
            "frame.tenon_at", List.of("", "start", "end"),
            "frame.seen_from", List.of("", "start", "end"),
            "settings.stick_marks", List.of("", "lines", "notches"));

    private JobForm() {}

    /** Which fields only one kind of frame has; the others would be refused in its job file. */
    private static boolean belongs(String name, String kind) {
        return switch (name) {
            case "frame.places" -> !kind.isEmpty();
            case "frame.seen_from" -> kind.equals("row");
            case "frame.groups" -> kind.equals("legs");
            case "frame.kind" -> true;
            default -> !name.startsWith("frame.") || kind.equals("wheel");
        };
    }

    static List<Group> of(JobText text, Attempt attempt) {
        Map<String, String> written = Written.job(text);
        UnitSystem units = text.job().units();
        String kind = written.getOrDefault("frame.kind", "");
        List<Group> out = new ArrayList<>();
        for (Section section : SECTIONS) {
            List<FieldView> fields = section.rows().stream()
                    .filter(row -> belongs(row.name(), kind))
                    .map(row -> field(row, written.getOrDefault(row.name(), ""), units))
                    .toList();
            if (!fields.isEmpty()) {
                out.add(new Group(section.title(), attempt.onto("job", fields)));
            }
        }
        return out;
    }

    private static FieldView field(Row row, String value, UnitSystem units) {
        FieldView field = row.look() == Look.LENGTH
                ? FieldView.length(row.name(), row.label(), value, units)
                : FieldView.of(row.look(), row.name(), row.label(), value);
        return field.hint(row.hint()).with(choices(row.name()));
    }

    private static List<String> choices(String name) {
        return name.equals("wood.species")
                ? Woods.shipped().list().stream().map(Species::name).toList()
                : CHOICES.getOrDefault(name, List.of());
    }
}
