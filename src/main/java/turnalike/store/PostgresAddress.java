package turnalike.store;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import turnalike.units.Parsed;

/**
 * Where a PostgreSQL database is, and who asks.
 *
 * @param user as the database knows him
 * @param password empty where the driver is to look for it in the user's own password file
 * @param host a name or an address
 * @param port from 1 to 65535
 * @param database its name
 * @param settings how the connection is kept secret: {@code sslmode}, {@code sslrootcert}
 */
public record PostgresAddress(
        String user, Optional<String> password, String host, int port, String database, Map<String, String> settings) {
    static final int USUAL_PORT = 5432;

    /** What may stand after the question mark: how the driver of PostgreSQL encrypts, by its own names. */
    private static final Set<String> SETTINGS = Set.of("sslmode", "sslrootcert");

    private static final Pattern BEGINNING = Pattern.compile("(?i)postgres(ql)?:");

    private static final Pattern FORM = Pattern.compile(
            "(?i)postgres(?:ql)?://(?:(?<who>[^/]*)@)?"
                    + "(?<host>[^/@:?\\[\\]]+|\\[[0-9a-f:.]+\\])(?::(?<port>\\d{1,5}))?/(?<database>[^/?]+)(?:\\?(?<settings>.*))?");

    private static final String EXAMPLE = "write it like postgresql://anna@bench-pc/shop, a password as anna:password@";

    public PostgresAddress {
        settings = Map.copyOf(settings);
    }

    /** Whether the text means a database and no file. */
    static boolean claims(String text) {
        return BEGINNING.matcher(text).lookingAt();
    }

    /** Reads an address; what is wrong is told without the address, which may hold a password. */
    static Parsed<PostgresAddress> parse(String text) {
        Matcher form = FORM.matcher(text.strip());
        if (!form.matches()) {
            return Parsed.refused("is no address of a database", EXAMPLE);
        }
        int port =
                Optional.ofNullable(form.group("port")).map(Integer::parseInt).orElse(USUAL_PORT);
        if (port < 1 || port > 65_535) {
            return Parsed.refused("names the port %d".formatted(port), "give one from 1 to 65535");
        }
        try {
            String who = Optional.ofNullable(form.group("who")).orElse("");
            int colon = who.indexOf(':');
            String user = plain(colon < 0 ? who : who.substring(0, colon));
            return settings(Optional.ofNullable(form.group("settings")).orElse(""))
                    .fold(
                            settings -> Parsed.of(new PostgresAddress(
                                    user.isEmpty() ? System.getProperty("user.name", "") : user,
                                    colon < 0 ? Optional.empty() : Optional.of(plain(who.substring(colon + 1))),
                                    form.group("host"),
                                    port,
                                    plain(form.group("database")),
                                    settings)),
                            Parsed::refused);
        } catch (IllegalArgumentException broken) {
            return Parsed.refused("has a percent sign without two digits after it", "write a percent sign as %25");
        }
    }

    private static Parsed<Map<String, String>> settings(String text) {
        Map<String, String> out = new TreeMap<>();
        for (String each : text.split("&", -1)) {
            int sign = each.indexOf('=');
            String name = (sign < 0 ? each : each.substring(0, sign)).toLowerCase(Locale.ROOT);
            if (!each.isEmpty() && (sign < 0 || !SETTINGS.contains(name))) {
                return Parsed.refused("has a setting that is not known", "sslmode=… and sslrootcert=… may stand there");
            }
            if (!each.isEmpty()) {
                out.put(name, plain(each.substring(sign + 1)));
            }
        }
        return Parsed.of(out);
    }

    /** Percent signs with two hexadecimal digits are the bytes they stand for, RFC 3986, section 2.1 (from memory). */
    private static String plain(String text) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            if (letter == '%') {
                if (i + 3 > text.length()) {
                    throw new IllegalArgumentException("cut off");
                }
                bytes.write(Integer.parseInt(text.substring(i + 1, i + 3), 16));
                i += 2;
            } else if (Character.isHighSurrogate(letter) && i + 1 < text.length()) {
                bytes.writeBytes(text.substring(i, i + 2).getBytes(StandardCharsets.UTF_8));
                i++;
            } else {
                bytes.writeBytes(String.valueOf(letter).getBytes(StandardCharsets.UTF_8));
            }
        }
        return bytes.toString(StandardCharsets.UTF_8);
    }

    /** {@return what messages call it: everything but the password} */
    public String place() {
        return "postgresql://%s@%s%s/%s"
                .formatted(user, host, port == USUAL_PORT ? "" : ":" + port, database)
                .replaceAll("\\p{Cntrl}", "?");
    }

    /** Never with the password, wherever it may be written. */
    @Override
    public String toString() {
        return place();
    }
}
