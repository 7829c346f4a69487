package turnalike.web.kit;

import java.util.Optional;
import turnalike.release.Release;

/**
 * What every page has round it.
 *
 * @param title of the page, without the program's name
 * @param token for its forms
 * @param assets the address of each file it loads
 * @param tour the walk through the first job, where this browser is on one
 * @param news a release of which nobody has closed the note yet
 */
public record Shell(String title, String token, Assets assets, Optional<Tour> tour, Optional<Release> news) {
    /** Without news. */
    public Shell(String title, String token, Assets assets, Optional<Tour> tour) {
        this(title, token, assets, tour, Optional.empty());
    }

    /** The address of a file. */
    public String asset(String name) {
        return assets.address(name);
    }
}
