package turnalike.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The picture of the levels in the documents shows the packages there really are. */
class LevelsPictureTest {
    private static final Path KEPT = Path.of("docs/levels.svg");
    private static final String RENEW = "turnalike.renew";

    private static final int WIDTH = 960;
    private static final int LEFT = 40;
    private static final int GAP = 10;
    private static final int LINE = 17;
    private static final int TITLE = 28;

    @Test
    void the_kept_picture_is_the_one_that_is_true() throws IOException {
        String now = picture(Levels.roomsOf(Levels.classes()));
        if (Boolean.getBoolean(RENEW)) {
            Files.writeString(KEPT, now);
        }
        assertThat(Files.readString(KEPT))
                .as("docs/levels.svg; renew it with mvn test -Dtest=LevelsPictureTest -D%s=true", RENEW)
                .isEqualTo(now);
    }

    @Test
    void a_package_more_is_another_picture() {
        Map<String, Set<String>> rooms = Levels.roomsOf(Levels.classes());
        String now = picture(rooms);
        rooms.put("pieces", new TreeSet<>(Set.of("", "control", "mend", "sorting")));
        assertThat(picture(rooms)).isNotEqualTo(now).contains("sorting");
    }

    private static String picture(Map<String, Set<String>> rooms) {
        Map<Integer, List<String>> levels = new TreeMap<>(Collections.reverseOrder());
        rooms.keySet().forEach(feature -> levels.computeIfAbsent(Levels.level(feature), level -> new ArrayList<>())
                .add(feature));
        StringBuilder shapes = new StringBuilder();
        int y = GAP;
        for (Map.Entry<Integer, List<String>> level : levels.entrySet()) {
            y = row(shapes, y, level.getKey(), level.getValue(), rooms);
        }
        return """
                <svg xmlns="http://www.w3.org/2000/svg" width="%1$d" height="%2$d" viewBox="0 0 %1$d %2$d" \
                font-family="sans-serif" font-size="13">
                <title>The packages by their levels: each uses only packages below it</title>
                <rect width="%1$d" height="%2$d" fill="#fff"/>
                %3$s</svg>
                """.formatted(WIDTH, y, shapes);
    }

    private static int row(
            StringBuilder shapes, int y, int level, List<String> features, Map<String, Set<String>> rooms) {
        int width = (WIDTH - LEFT - GAP * features.size()) / features.size();
        int most = features.stream()
                .mapToInt(each -> lines(each, rooms).size())
                .max()
                .orElse(0);
        int height = TITLE + LINE * most + (most > 0 ? GAP : 0);
        text(shapes, 14, y + 19, "", Integer.toString(level));
        for (int i = 0; i < features.size(); i++) {
            int x = LEFT + i * (width + GAP);
            shapes.append("<rect x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\" fill=\"none\" stroke=\"#333\"/>\n"
                    .formatted(x, y, width, height));
            String feature = features.get(i);
            text(shapes, x + 8, y + 19, " font-weight=\"bold\"", feature.isEmpty() ? "turnalike" : feature);
            List<String> lines = lines(feature, rooms);
            for (int line = 0; line < lines.size(); line++) {
                text(shapes, x + 8, y + TITLE + LINE * line + 12, "", lines.get(line));
            }
        }
        return y + height + GAP;
    }

    /** The rooms from the top down, those of one level on one line. */
    private static List<String> lines(String feature, Map<String, Set<String>> rooms) {
        Set<String> left = new TreeSet<>(rooms.getOrDefault(feature, Set.of()));
        List<String> lines = new ArrayList<>();
        if (left.size() < 2) {
            return lines;
        }
        for (Set<String> level : Levels.rooms(feature)) {
            Set<String> there = new TreeSet<>(level);
            there.retainAll(left);
            left.removeAll(there);
            if (!there.isEmpty()) {
                lines.add(0, named(feature, there));
            }
        }
        if (!left.isEmpty()) {
            lines.add(0, named(feature, left) + " (on no level)");
        }
        return lines;
    }

    private static String named(String feature, Set<String> rooms) {
        return String.join(
                " · ",
                rooms.stream()
                        .map(room -> room.isEmpty() ? feature + " itself" : room)
                        .toList());
    }

    private static void text(StringBuilder shapes, int x, int y, String more, String text) {
        shapes.append("<text x=\"%d\" y=\"%d\"%s>%s</text>\n".formatted(x, y, more, text));
    }
}
