package turnalike.drawing.dxf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads a DXF of Release 12 strictly, from Autodesk's reference for that release as remembered, and shares no code with the writer: pairs
 * of lines, sections in order, every layer declared, polylines ended.
 */
final class DxfReading {
    /** One entity with its own groups; a polyline also has its vertices, each as x, y, bulge. */
    record Entity(String kind, Map<Integer, String> groups, List<double[]> vertices) {
        double number(int code) {
            return Double.parseDouble(groups.getOrDefault(code, "0"));
        }

        String layer() {
            return groups.getOrDefault(8, "");
        }
    }

    private record Pair(int code, String value) {}

    private final List<Pair> pairs = new ArrayList<>();
    private int at;
    final Map<String, String> header = new HashMap<>();
    final List<String> layers = new ArrayList<>();
    final List<Entity> entities = new ArrayList<>();

    DxfReading(String text) {
        assertThat(text).matches("(?s)[\\x0d\\x0a\\x20-\\x7e]*");
        String[] lines = text.split("\r\n", -1);
        assertThat(lines.length % 2)
                .as("pairs, and the empty end of the last line")
                .isOne();
        for (int i = 0; i + 1 < lines.length; i += 2) {
            assertThat(lines[i]).matches(" {0,2}\\d{1,3}");
            pairs.add(new Pair(Integer.parseInt(lines[i].trim()), lines[i + 1]));
        }
        while (pairs.get(at).code() == 999) {
            at++;
        }
        section("HEADER", this::readHeader);
        section("TABLES", this::readTables);
        section("ENTITIES", this::readEntities);
        take(0, "EOF");
        assertThat(at).isEqualTo(pairs.size());
    }

    private void take(int code, String value) {
        assertThat(pairs.get(at++)).isEqualTo(new Pair(code, value));
    }

    private boolean next(int code, String value) {
        return pairs.get(at).equals(new Pair(code, value));
    }

    private void section(String name, Runnable reader) {
        take(0, "SECTION");
        take(2, name);
        reader.run();
        take(0, "ENDSEC");
    }

    private void readHeader() {
        while (pairs.get(at).code() == 9) {
            String name = pairs.get(at++).value();
            StringBuilder value = new StringBuilder();
            while (pairs.get(at).code() != 9 && pairs.get(at).code() != 0) {
                value.append(pairs.get(at++).value()).append(' ');
            }
            header.put(name, value.toString().trim());
        }
    }

    private void readTables() {
        while (next(0, "TABLE")) {
            at++;
            String table = pairs.get(at++).value();
            int promised = Integer.parseInt(pairs.get(at++).value());
            int entries = 0;
            while (!next(0, "ENDTAB")) {
                if (pairs.get(at).code() == 0) {
                    entries++;
                    assertThat(pairs.get(at).value()).isEqualTo(table);
                } else if (table.equals("LAYER") && pairs.get(at).code() == 2) {
                    layers.add(pairs.get(at).value());
                }
                at++;
            }
            assertThat(entries).isEqualTo(promised);
            at++;
        }
    }

    private void readEntities() {
        while (!next(0, "ENDSEC")) {
            Entity entity = entity();
            assertThat(layers).contains(entity.layer());
            assertThat(entity.kind()).isIn("POLYLINE", "LINE", "TEXT");
            if (entity.kind().equals("POLYLINE")) {
                assertThat(entity.groups()).containsEntry(66, "1");
                while (next(0, "VERTEX")) {
                    Entity vertex = entity();
                    assertThat(vertex.layer()).isEqualTo(entity.layer());
                    entity.vertices().add(new double[] {vertex.number(10), vertex.number(20), vertex.number(42)});
                }
                assertThat(entity().kind()).isEqualTo("SEQEND");
            }
            entities.add(entity);
        }
    }

    private Entity entity() {
        String kind = pairs.get(at++).value();
        Map<Integer, String> groups = new HashMap<>();
        while (pairs.get(at).code() != 0) {
            Pair pair = pairs.get(at++);
            assertThat(groups.put(pair.code(), pair.value()))
                    .as("group %d twice", pair.code())
                    .isNull();
        }
        return new Entity(kind, groups, new ArrayList<>());
    }
}
