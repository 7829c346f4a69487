package turnalike.web.lan;

import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.Optional;

/**
 * A device that was paired.
 *
 * @param id what it is shown out by
 * @param name what its owner called it; one line
 * @param digest of the secret it carries, SHA-256 in hexadecimal: whoever reads our file cannot pass for the device
 * @param paired when
 * @param role what it may do
 */
public record Device(String id, String name, String digest, Instant paired, DeviceRole role) {
    private static final int LONGEST_NAME = 40;

    public Device {
        if (!isName(name)) {
            throw new IllegalArgumentException(
                    "a device's name is one line of 40 letters at most, was '%s'".formatted(name));
        }
    }

    /** Whether a device may be called so. */
    static boolean isName(String name) {
        return !name.isBlank() && name.length() <= LONGEST_NAME && name.chars().noneMatch(Character::isISOControl);
    }

    String line() {
        return String.join("\t", id, digest, paired.toString(), role.word(), name);
    }

    /** The device of a line that {@link #line} wrote; nothing of any other. */
    static Optional<Device> of(String line) {
        String[] parts = line.split("\t", 5);
        if (parts.length < 4 || !isName(parts[parts.length - 1])) {
            return Optional.empty();
        }
        // Before there were roles a line had four parts, and each device might do everything.
        DeviceRole role = parts.length == 4
                ? DeviceRole.CHANGE
                : DeviceRole.find(parts[3]).orElse(DeviceRole.LOG);
        try {
            Instant paired = Instant.parse(parts[2]);
            return Optional.of(new Device(parts[0], parts[parts.length - 1], parts[1], paired, role));
        } catch (DateTimeParseException damaged) {
            return Optional.empty();
        }
    }

    Device allowed(DeviceRole now) {
        return new Device(id, name, digest, paired, now);
    }
}
