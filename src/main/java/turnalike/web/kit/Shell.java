package turnalike.web.kit;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import turnalike.language.Language;
import turnalike.release.Release;

/**
 * What every page has round it.
 *
 * @param title of the page, without the program's name
 * @param token for its forms
 * @param assets the address of each file it loads
 * @param language it is in
 * @param tour the walk through the first job, where this browser is on one
 * @param news a release of which nobody has closed the note yet
 */
public record Shell(
        String title, String token, Assets assets, Language language, Optional<Tour> tour, Optional<Release> news) {
    /** Without news. */
    public Shell(String title, String token, Assets assets, Language language, Optional<Tour> tour) {
        this(title, token, assets, language, tour, Optional.empty());
    }

    /** The address of a file. */
    public String asset(String name) {
        return assets.address(name, language);
    }

    /** The languages that the page could be in instead. */
    public List<Language> otherLanguages() {
        return Arrays.stream(Language.values()).filter(each -> each != language).toList();
    }
}
