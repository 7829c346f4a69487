package turnalike.job.edit;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import turnalike.job.kept.JobText;
import turnalike.units.Length;
import turnalike.units.LengthText;
import turnalike.units.Parsed;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;

/** A starter pattern at the size asked for, as a job's text. */
public final class StarterJob {
    /** The blank is longer than the piece by an inch, 25 mm, for holding and parting off (common practice, no source). */
    private static final Length SPARE_INCH = Length.ofInches(1);

    private static final Length SPARE_MM = Length.ofMm(25);

    /** A long stretch shorter than half its thickness looks like another detail (common practice, no source). */
    private static final double LEAST_STRETCH = 0.5;

    /** Thinner than half an inch, 12 mm, details are too small to cut; thicker than 8 in, 200 mm, is a slip (common practice, no source). */
    private static final double THINNEST_MM = 12;

    private static final double THICKEST_MM = 203.2;
    private static final double LONGEST_MM = 3000;

    private final Starter starter;
    private final UnitSystem units;
    private final double stepMm;
    private final double lengthMm;
    private final double sizeMm;

    private StarterJob(Starter starter, Length length, Length size, UnitSystem units) {
        this.starter = starter;
        this.units = units;
        // Steps that a turner sets a caliper to and finds on a rule.
        this.stepMm = units == UnitSystem.INCH ? Length.MM_PER_INCH / 32 : 0.5;
        this.lengthMm = Math.round(length.mm() / stepMm) * stepMm;
        this.sizeMm = size.mm();
    }

    /**
     * {@return the job; refused where the details alone are longer than that, or the blank is of no thickness to turn}
     *
     * @param starter the pattern
     * @param length of the piece from end to end, rounded to 1/32 in or 0.5 mm
     * @param size of the square blank across its flats
     * @param units the job's; sizes are rounded to 1/32 in or 0.5 mm
     */
    public static Parsed<JobText> of(Starter starter, Length length, Length size, UnitSystem units) {
        if (size.mm() < THINNEST_MM || size.mm() > THICKEST_MM) {
            return Parsed.refused(
                    "the blank is %s across".formatted(size.format(units)),
                    "give one from 12 mm (1/2 in) to 203 mm (8 in)");
        }
        StarterJob job = new StarterJob(starter, length, size, units);
        if (length.mm() < job.leastMm() - 1e-9 || length.mm() > LONGEST_MM) {
            double least = Math.ceil(job.leastMm() / job.stepMm) * job.stepMm;
            return Parsed.refused(
                    "%s is no length for it out of a blank %s across"
                            .formatted(length.format(units), size.format(units)),
                    "give from %s to 3 m (118 in), or a %s blank"
                            .formatted(
                                    Length.ofMm(least).format(units),
                                    length.mm() > LONGEST_MM ? "thicker" : "thinner"));
        }
        JobText.Read read = JobText.read(job.text());
        return read.text().map(Parsed::of).orElseGet(() -> {
            Problem first = read.problems().get(0);
            return Parsed.refused(first.where() + ": " + first.what(), first.mend());
        });
    }

    private double detailsMm() {
        return starter.parts().stream()
                .mapToDouble(part -> part.share() > 0 ? 0 : rounded(part.length() * sizeMm))
                .sum();
    }

    private double shares() {
        return starter.parts().stream().mapToDouble(StarterPart::share).sum();
    }

    private double leastMm() {
        double smallest = starter.parts().stream()
                .mapToDouble(StarterPart::share)
                .filter(share -> share > 0)
                .min()
                .orElse(1);
        return detailsMm() + LEAST_STRETCH * sizeMm * shares() / smallest;
    }

    private double rounded(double mm) {
        return Math.max(1, Math.round(mm / stepMm)) * stepMm;
    }

    private String text() {
        JsonNodeFactory json = JsonNodeFactory.instance;
        ObjectNode root = json.objectNode();
        root.put("format", "turnalike-job").put("version", 1).put("title", starter.title());
        root.put("units", units.symbol());
        ObjectNode pattern = root.putObject("pattern").put("name", starter.title());
        Length spare = units == UnitSystem.INCH ? SPARE_INCH : SPARE_MM;
        pattern.putObject("stock")
                .put("section", "square")
                .put("size", typed(sizeMm))
                .put("length", typed(lengthMm + spare.mm()));
        members(pattern.putArray("members"));
        root.putObject("wood").put("species", "White ash").put("moisture_pct", 8);
        root.put("count", 1);
        root.putObject("allowances").put("sizing", units == UnitSystem.INCH ? "1/32" : "0.8");
        return root.toPrettyString() + "\n";
    }

    /** What is long takes up what is left, the roundings too: the run is as long as was asked. */
    private void members(ArrayNode members) {
        double left = lengthMm - detailsMm();
        double shares = shares();
        List<StarterPart> parts = starter.parts();
        for (StarterPart part : parts) {
            double mm = rounded(part.length() * sizeMm);
            if (part.share() > 0) {
                boolean last = shares - part.share() < 1e-9;
                mm = last ? left : rounded(left * part.share() / shares);
                left -= mm;
                shares -= part.share();
            }
            ObjectNode member = members.addObject().put("kind", part.kind());
            if (!part.name().isEmpty()) {
                member.put("name", part.name());
            }
            member.put("length", typed(mm));
            part.sizes().forEach(size -> member.put(size.key(), typed(size(part, size))));
        }
    }

    /** A tenon is as wide as a bit there is: to 1/16 in or 1 mm. */
    private double size(StarterPart part, StarterPart.Size size) {
        boolean bored = part.kind().equals("tenon") && size.key().equals("diameter");
        double bitMm = units == UnitSystem.INCH ? Length.MM_PER_INCH / 16 : 1;
        return bored ? Math.max(1, Math.round(size.part() * sizeMm / bitMm)) * bitMm : rounded(size.part() * sizeMm);
    }

    private String typed(double mm) {
        LengthText.Printed fraction = LengthText.print(Length.ofMm(mm), units);
        if (Math.abs(fraction.roundedOff().mm()) < 1e-6) {
            return fraction.text().replace(" " + units.symbol(), "");
        }
        return String.format(Locale.ROOT, "%.4f mm", mm);
    }
}
