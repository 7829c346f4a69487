package turnalike.web.kit;

/**
 * What every page has round it.
 *
 * @param title of the page, without the program's name
 * @param token for its forms
 * @param assets the address of each file it loads
 */
public record Shell(String title, String token, Assets assets) {
    /** The address of a file. */
    public String asset(String name) {
        return assets.address(name);
    }
}
