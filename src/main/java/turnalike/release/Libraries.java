package turnalike.release;

import java.util.List;
import java.util.Optional;

/** Every library that the program ships with, by the table that is packed with it; the bill of materials is where the table comes from. */
public final class Libraries {
    private static final String TABLE = "/turnalike/release/libraries.tsv";

    private Libraries() {}

    /** {@return all of them, by name} */
    public static List<Library> list() {
        return Packed.text(TABLE)
                .lines()
                .skip(1)
                .map(line -> line.split("\t", -1))
                .map(cells -> new Library(cells[0], cells[1], cells[2], cells[3]))
                .toList();
    }

    /**
     * {@return the library of that name, if there is one}
     *
     * @param name without the version
     */
    public static Optional<Library> find(String name) {
        return list().stream().filter(each -> each.name().equals(name)).findFirst();
    }
}
