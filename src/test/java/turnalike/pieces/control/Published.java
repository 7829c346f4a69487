package turnalike.pieces.control;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** The published series beside the tests; their sources are in the README there. */
final class Published {
    private Published() {}

    static List<List<String>> rows(String file) {
        try (InputStream in = Objects.requireNonNull(Published.class.getResourceAsStream(file), file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .skip(1)
                    .map(line -> List.of(line.split(",", -1)))
                    .toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static List<ChartPoint> series(String name) {
        return rows("spc_worked_series.csv").stream()
                .filter(row -> row.get(0).equals(name))
                .map(row -> new ChartPoint(row.get(1), Double.parseDouble(row.get(2))))
                .toList();
    }
}
