package turnalike.web.lan;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The devices as the host sees them.
 *
 * @param code that pairs the next one
 * @param addresses to open on it
 * @param next what it may do once it is paired
 * @param token that was just made for a program; shown this once
 */
public record DevicesView(
        List<Device> devices, String code, List<String> addresses, DeviceRole next, Optional<String> token) {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

    public DevicesView {
        devices = List.copyOf(devices);
        addresses = List.copyOf(addresses);
    }

    public String paired(Device device) {
        return TIME.format(device.paired().atZone(ZoneId.systemDefault()));
    }

    /** The code in two halves, as it is easier to carry across the shop. */
    public String spacedCode() {
        return code.substring(0, 3) + " " + code.substring(3);
    }
}
