package turnalike.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.Comparator;
import java.util.Optional;
import java.util.Properties;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.postgresql.Driver;

/**
 * A real PostgreSQL of the tests' own: in a folder of its own under {@code /tmp}, on the loopback alone, run by another account where the
 * tests run as root, since it refuses root. It ends with this program, however that ends, and takes its folder with it.
 */
final class PostgresServer implements AutoCloseable {
    static final String USER = "turner";
    static final String PASSWORD = "spindle%7";

    private static final Duration LONGEST_START = Duration.ofSeconds(60);
    private static final AtomicInteger DATABASES = new AtomicInteger();

    private final Path folder;
    private final int port;
    private final Process process;

    private PostgresServer(Path folder, int port, Process process) {
        this.folder = folder;
        this.port = port;
        this.process = process;
    }

    private static final class Shared {
        private static final PostgresServer SERVER = start("");
    }

    /** One for all tests of this program. */
    static PostgresServer shared() {
        return Shared.SERVER;
    }

    /** Where Debian puts its programs, the newest of several. */
    static Optional<Path> programs() {
        try (Stream<Path> all = Files.list(Path.of("/usr/lib/postgresql"))) {
            return all.map(each -> each.resolve("bin"))
                    .filter(each -> Files.isExecutable(each.resolve("initdb")))
                    .max(Comparator.naturalOrder());
        } catch (IOException none) {
            return Optional.empty();
        }
    }

    /** @param settings more of them, as the server takes them on its command line */
    static PostgresServer start(String settings) {
        Path programs = programs()
                .orElseThrow(() ->
                        new IllegalStateException("the tests need PostgreSQL; on Debian: apt-get install postgresql"));
        try {
            Path folder = Files.createTempDirectory("turnalike-postgresql");
            Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxrwxrwx"));
            int port = freePort();
            Path script = Files.writeString(folder.resolve("serve.sh"), SCRIPT.formatted(programs, port, settings));
            Files.writeString(folder.resolve("password"), PASSWORD + "\n");
            boolean root = "root".equals(System.getProperty("user.name"));
            String serve = (root ? "runuser -u postgres -- sh " : "sh ") + script;
            Process process = new ProcessBuilder("sh", "-c", "%s; rm -rf %s".formatted(serve, folder))
                    .directory(folder.toFile())
                    .redirectErrorStream(true)
                    .redirectOutput(folder.resolve("log").toFile())
                    .start();
            PostgresServer server = new PostgresServer(folder, port, process);
            server.await();
            return server;
        } catch (IOException trouble) {
            throw new UncheckedIOException(trouble);
        }
    }

    /**
     * Serves until its input ends, which it does when the tests' program is gone. The server is killed by the number that the shell knows:
     * its own file is not written yet where one kill follows the other. A disk that loses what it was given is not tried here.
     */
    private static final String SCRIPT = """
            mkdir made && cd made || exit 1
            export LC_ALL=C.UTF-8 PATH=%1$s:$PATH
            initdb -D data -U turner -E UTF8 -A md5 --pwfile=../password --no-sync > init.log || exit 1
            serve() { postgres -D data -p %2$d -c listen_addresses=127.0.0.1 -c unix_socket_directories= -c fsync=off -c max_connections=60 \\
                -c restart_after_crash=on -c log_min_messages=warning %3$s < /dev/null & server=$!; }
            serve
            while read -r line; do
                case $line in
                    kill) kill -KILL $server; wait; sleep 0.3; rm -f data/postmaster.pid; serve ;;
                esac
            done
            kill -QUIT $server
            wait
            """;

    private static int freePort() throws IOException {
        try (ServerSocket any = new ServerSocket(0)) {
            return any.getLocalPort();
        }
    }

    private void await() {
        long until = System.nanoTime() + LONGEST_START.toNanos();
        while (true) {
            try {
                connect("postgres").close();
                return;
            } catch (SQLException notYet) {
                if (System.nanoTime() > until || !process.isAlive()) {
                    throw new IllegalStateException("PostgreSQL does not start, see " + folder, notYet);
                }
                sleep();
            }
        }
    }

    private static void sleep() {
        try {
            Thread.sleep(50);
        } catch (InterruptedException stop) {
            throw new IllegalStateException(stop);
        }
    }

    /** Kills the whole server without warning and starts it again on what it left. */
    void killAndStart() {
        try {
            process.getOutputStream().write("kill\n".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
            process.getOutputStream().flush();
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }

    Connection connect(String database) throws SQLException {
        Properties how = new Properties();
        how.setProperty("user", USER);
        how.setProperty("password", PASSWORD);
        return new Driver().connect("jdbc:postgresql://127.0.0.1:%d/%s".formatted(port, database), how);
    }

    /** Runs statements from outside the program. */
    void sql(String database, String... statements) {
        try (Connection connection = connect(database);
                Statement statement = connection.createStatement()) {
            for (String each : statements) {
                statement.execute(each);
            }
        } catch (SQLException wrong) {
            throw new IllegalStateException(wrong);
        }
    }

    /** A new database with nothing in it. */
    PostgresAddress makeDatabase() {
        String name = "shop_%d".formatted(DATABASES.incrementAndGet());
        sql("postgres", "CREATE DATABASE " + name);
        return address(name);
    }

    PostgresAddress address(String database) {
        return PostgresAddress.parse(text(database)).get();
    }

    /** As somebody would type it; the percent sign of the password is written as an address writes it. */
    String text(String database) {
        return "postgresql://%s:%s@127.0.0.1:%d/%s".formatted(USER, PASSWORD.replace("%", "%25"), port, database);
    }

    int port() {
        return port;
    }

    @Override
    public void close() {
        try {
            process.getOutputStream().close();
            process.waitFor();
        } catch (IOException trouble) {
            throw new UncheckedIOException(trouble);
        } catch (InterruptedException stop) {
            throw new IllegalStateException(stop);
        }
    }
}
