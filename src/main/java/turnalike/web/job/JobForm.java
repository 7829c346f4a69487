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

    private record Row(String group, String name, String label, Look look, String hint) {}

    private static final String PARTED = "parted by semicolons";

    private static final List<Row> ROWS = List.of(
            new Row("Order", "title", "Title", Look.TEXT, ""),
            new Row("Order", "pattern.name", "Pattern", Look.TEXT, "left empty: the title"),
            new Row("Order", "count", "Good pieces wanted", Look.NUMBER, ""),
            new Row("Order", "loss_pct", "Blanks lost, %", Look.NUMBER, "left empty: the usual share"),
            new Row("Stock and wood", "pattern.stock.section", "Section", Look.CHOICE, ""),
            new Row("Stock and wood", "pattern.stock.size", "Across", Look.LENGTH, ""),
            new Row("Stock and wood", "pattern.stock.length", "Length", Look.LENGTH, ""),
            new Row("Stock and wood", "wood.species", "Species", Look.TEXT, ""),
            new Row("Stock and wood", "wood.moisture_pct", "Moisture, %", Look.NUMBER, "left empty: 8"),
            new Row("Stock and wood", "wood.density_kg_m3", "Or density, kg/m³", Look.NUMBER, "in place of a species"),
            new Row("Tolerances", "tolerances.mark", "A mark, each step", Look.LENGTH, "left empty: 0.25 mm"),
            new Row("Tolerances", "tolerances.diameter", "A diameter", Look.LENGTH, "left empty: 0.4 mm"),
            new Row("Tolerances", "tolerances.mass_pct", "Weights of a set, %", Look.NUMBER, "left empty: 2"),
            new Row("Tolerances", "tolerances.scale_g", "The scale shows, g", Look.NUMBER, "left empty: 0.1"),
            new Row(
                    "Tolerances",
                    "tolerances.mark_limit",
                    "What a mark may collect",
                    Look.LENGTH,
                    "left empty: three steps"),
            new Row("Allowances", "allowances.sizing", "Sized over by", Look.LENGTH, "left empty: none"),
            new Row("Allowances", "allowances.sanding", "Sanding takes", Look.LENGTH, "left empty: none"),
            new Row("Allowances", "allowances.milling", "Milling, each face", Look.LENGTH, "left empty: the usual"),
            new Row("Allowances", "allowances.trimming", "Trimming, each end", Look.LENGTH, "left empty: the usual"),
            new Row(
                    "Your choice of settings",
                    "settings.pin",
                    "Openings you have set",
                    Look.TEXT,
                    PARTED + ": 1 1/4; 3"),
            new Row("Your choice of settings", "settings.forbid", "Openings not to use", Look.TEXT, PARTED),
            new Row(
                    "Your choice of settings",
                    "settings.stick",
                    "Marks from the stick",
                    Look.TEXT,
                    "numbers of marks, " + PARTED),
            new Row(
                    "Your choice of settings",
                    "settings.stick_marks",
                    "The stick is marked by",
                    Look.CHOICE,
                    "left empty: lines"),
            new Row("Turning", "turning.speeds", "Your lathe's speeds, rpm", Look.TEXT, PARTED + ": 500; 900; 1500"),
            new Row("Turning", "turning.max_rpm", "Lathe's fastest, rpm", Look.NUMBER, "left empty: any"),
            new Row("Turning", "turning.force_n", "Tool pushes with, N", Look.NUMBER, "left empty: 20, a light cut"),
            new Row("Turning", "turning.tailstock_force_n", "Tailstock presses with, N", Look.NUMBER, ""),
            new Row("Turning", "wood.moe_mpa", "Wood's stiffness, MPa", Look.NUMBER, "left empty: the handbook's"),
            new Row(
                    "How alike",
                    "checks",
                    "Where a caliper is laid",
                    Look.LINES,
                    "a line each: name ; place from the head end"),
            new Row("How alike", "likeness.length", "Lengths and marks count", Look.NUMBER, "left empty: 3"),
            new Row("How alike", "likeness.diameter", "Diameters count", Look.NUMBER, "left empty: 2"),
            new Row("How alike", "likeness.mass", "Weights count", Look.NUMBER, "left empty: 1"),
            new Row("Frame", "frame.kind", "Goes into", Look.CHOICE, "left empty: no frame"),
            new Row("Frame", "frame.places", "Places", Look.NUMBER, "of a wheel, a row, or one group of legs"),
            new Row("Frame", "frame.groups", "Groups of legs", Look.NUMBER, ""),
            new Row("Frame", "frame.hub_radius", "Hub radius", Look.LENGTH, "a wheel's; to the shoulder"),
            new Row("Frame", "frame.tenon_at", "End in the hub", Look.CHOICE, ""),
            new Row("Frame", "frame.counterweight_radius", "Counterweight radius", Look.LENGTH, ""),
            new Row("Frame", "frame.rpm", "Will turn at, rpm", Look.NUMBER, "for information"),
            new Row("Frame", "frame.seen_from", "Seen from", Look.CHOICE, "left empty: the start"),
            new Row(
                    "The bare wheel",
                    "frame.seat_depths",
                    "Seats too deep by",
                    Look.TEXT,
                    "one for each place, " + PARTED),
            new Row(
                    "The bare wheel",
                    "frame.given_moments",
                    "Bare wheel pulls, g·mm ; at degrees",
                    Look.LINES,
                    "a line each: 1200 ; 90"),
            new Row(
                    "The bare wheel",
                    "frame.rocking.period_s",
                    "Rocking: there and back in, s",
                    Look.NUMBER,
                    "time ten swings"),
            new Row("The bare wheel", "frame.rocking.rests_at_deg", "Rocking: it rests at, degrees", Look.NUMBER, ""),
            new Row(
                    "The bare wheel",
                    "frame.rocking.amplitude_deg",
                    "Rocking: pushed by, degrees",
                    Look.NUMBER,
                    "left empty: 0"),
            new Row("The bare wheel", "frame.rocking.rim_mass_g", "Rocking: the rim weighs, g", Look.NUMBER, ""),
            new Row("The bare wheel", "frame.rocking.rim_radius", "Rocking: the rim's radius", Look.LENGTH, ""),
            new Row(
                    "The bare wheel",
                    "frame.rocking.inertia_g_mm2",
                    "Rocking: or its inertia, g·mm²",
                    Look.NUMBER,
                    "in place of the rim"));

    /** What may be sent; anything else is passed over. */
    static final Set<String> FIELDS = ROWS.stream().map(Row::name).collect(Collectors.toUnmodifiableSet());

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
        for (String title : ROWS.stream().map(Row::group).distinct().toList()) {
            List<FieldView> fields = ROWS.stream()
                    .filter(row -> row.group().equals(title) && belongs(row.name(), kind))
                    .map(row -> field(row, written.getOrDefault(row.name(), ""), units))
                    .toList();
            if (!fields.isEmpty()) {
                out.add(new Group(title, attempt.onto("job", fields)));
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
