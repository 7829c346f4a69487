package turnalike.web.lan;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;

/**
 * The paired devices, in a file beside the store, so that a phone paired once stays so. Read again whenever the file is another, so that a
 * command can show a device out of a program that serves. A line that is no device's, of a damaged file, is passed over: that device is paired
 * again. May be used by several threads.
 */
public final class Devices {
    private static final SecureRandom DICE = new SecureRandom();
    private static final int MOST = 100;

    private final Path file;
    private final Clock clock;
    private final List<Device> devices = new ArrayList<>();

    /** Begins the line that says what the next device may do; a file without one lets it change patterns. */
    private static final String NEXT = "next\t";

    private DeviceRole next = DeviceRole.CHANGE;
    private String readAs = "";

    /** @param file that remembers them; it may not be there yet */
    public Devices(Path file, Clock clock) {
        this.file = file;
        this.clock = clock;
        read();
    }

    private void read() {
        try {
            String now = Files.exists(file) ? Files.getLastModifiedTime(file) + " " + Files.size(file) : "";
            if (now.equals(readAs)) {
                return;
            }
            List<String> lines = now.isEmpty() ? List.of() : Files.readAllLines(file, StandardCharsets.UTF_8);
            devices.clear();
            lines.stream().flatMap(line -> Device.of(line).stream()).forEach(devices::add);
            next = lines.stream()
                    .filter(line -> line.startsWith(NEXT))
                    .findFirst()
                    .map(line -> DeviceRole.find(line.substring(NEXT.length())).orElse(DeviceRole.LOG))
                    .orElse(DeviceRole.CHANGE);
            readAs = now;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** In the order they were paired. */
    public synchronized List<Device> list() {
        read();
        return List.copyOf(devices);
    }

    /** What the next device that is paired may do. */
    synchronized DeviceRole next() {
        read();
        return next;
    }

    /** Says what each device that is paired from now on may do, after a start of the program too. */
    synchronized void next(DeviceRole role) {
        read();
        next = role;
        write();
    }

    /** Pairs a device of that name and returns the secret it is known by from now on. */
    synchronized String pair(String name, DeviceRole role) {
        read();
        byte[] drawn = new byte[32];
        DICE.nextBytes(drawn);
        String secret = Base64.getUrlEncoder().withoutPadding().encodeToString(drawn);
        byte[] id = new byte[6];
        DICE.nextBytes(id);
        if (devices.size() >= MOST) {
            devices.remove(0);
        }
        devices.add(new Device(HexFormat.of().formatHex(id), name, digest(secret), clock.instant(), role));
        write();
        return secret;
    }

    /** Pairs a program of that name and returns its token, told this once; empty for what is no device's name. */
    public Optional<String> token(String name, DeviceRole role) {
        String plain = name.strip();
        return Device.isName(plain) ? Optional.of(pair(plain, role)) : Optional.empty();
    }

    /** The device that carries the secret. */
    synchronized Optional<Device> find(String secret) {
        read();
        String digest = digest(secret);
        return devices.stream()
                .filter(each -> MessageDigest.isEqual(
                        each.digest().getBytes(StandardCharsets.UTF_8), digest.getBytes(StandardCharsets.UTF_8)))
                .findFirst();
    }

    /** Gives a device another role, from its next request on; false when there is none of that id. */
    public synchronized boolean allow(String id, DeviceRole role) {
        read();
        boolean is = devices.stream().anyMatch(each -> each.id().equals(id));
        if (is) {
            devices.replaceAll(each -> each.id().equals(id) ? each.allowed(role) : each);
            write();
        }
        return is;
    }

    /** Shows a device out: its next request is refused. */
    public synchronized boolean revoke(String id) {
        read();
        boolean was = devices.removeIf(each -> each.id().equals(id));
        if (was) {
            write();
        }
        return was;
    }

    private void write() {
        try {
            Path folder = Optional.ofNullable(file.toAbsolutePath().getParent()).orElse(Path.of("."));
            boolean posix =
                    FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
            Path beside = posix
                    ? Files.createTempFile(
                            folder,
                            ".devices",
                            ".part",
                            PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")))
                    : Files.createTempFile(folder, ".devices", ".part");
            List<String> lines =
                    new ArrayList<>(devices.stream().map(Device::line).toList());
            if (next != DeviceRole.CHANGE) {
                lines.add(NEXT + next.word());
            }
            Files.write(beside, lines, StandardCharsets.UTF_8);
            Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException refused) {
            throw new UncheckedIOException(refused);
        }
    }

    private static String digest(String secret) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(secret.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
