package turnalike.web.kit;

import java.util.Optional;

/**
 * What every page has round it.
 *
 * @param title of the page, without the program's name
 * @param token for its forms
 * @param assets the address of each file it loads
 * @param tour the walk through the first job, where this browser is on one
 */
public record Shell(String title, String token, Assets assets, Optional<Tour> tour) {
    /** The address of a file. */
    public String asset(String name) {
        return assets.address(name);
    }
}
