package turnalike.wood;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Reads the shipped {@code wood.csv} and {@code sources.csv}. Anything unreadable is our own fault and throws, naming the row. */
final class WoodTable {
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

    private WoodTable() {}

    static Woods load() {
        List<Species> species =
                rows("wood.csv").stream().map(WoodTable::species).toList();
        List<Source> sources = rows("sources.csv").stream()
                .map(row -> new Source(row.get("key"), row.get("what")))
                .toList();
        return new Woods(species, sources);
    }

    private static List<CSVRecord> rows(String name) {
        try (InputStream bytes = WoodTable.class.getResourceAsStream(name)) {
            if (bytes == null) {
                throw new IllegalStateException("the table %s is missing from the class path".formatted(name));
            }
            Reader text = new InputStreamReader(bytes, StandardCharsets.UTF_8);
            try (CSVParser parser = FORMAT.parse(text)) {
                return new ArrayList<>(parser.getRecords());
            }
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read the table " + name, e);
        }
    }

    private static Species species(CSVRecord row) {
        if (!row.isConsistent()) {
            throw new IllegalStateException(
                    "row %d of wood.csv has %d cells".formatted(row.getRecordNumber(), row.size()));
        }
        try {
            return new Species(
                    row.get("species_common"),
                    row.get("species_latin"),
                    new SpecificGravity(Double.parseDouble(row.get("sg_basic")), cell(row, "sg_12")),
                    new Strength(cell(row, "moe_12_mpa"), cell(row, "mor_12_mpa"), cell(row, "hardness_n")),
                    new Shrinkage(
                            cell(row, "shrink_radial_pct"),
                            cell(row, "shrink_tangential_pct"),
                            cell(row, "shrink_volumetric_pct")),
                    new Coefficients(cell(row, "coef_radial"), cell(row, "coef_tangential")),
                    Provenance.parse(row.get("source"), row.get("status")));
        } catch (IllegalArgumentException e) {
            throw new IllegalStateException(
                    "row %d of wood.csv: %s".formatted(row.getRecordNumber(), e.getMessage()), e);
        }
    }

    /** A blank is "not printed", never zero. */
    private static OptionalDouble cell(CSVRecord row, String column) {
        String text = row.get(column);
        return text.isBlank() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(text));
    }
}
