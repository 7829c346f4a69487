package turnalike.web;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Page;
import java.util.List;

/** The axe-core rules, asked of a page of one frame. */
public final class Axe {
    /** What is found serious or worse, in words; of the rules named, or of all. Only what is told leaves the browser. */
    private static final String ASKED = """
            async rules => {
              const options = { resultTypes: ["violations"] };
              if (rules.length > 0) options.runOnly = { type: "rule", values: rules };
              const { violations } = await axe.run(document, options);
              return violations
                  .filter(rule => ["serious", "critical"].includes(rule.impact))
                  .map(rule => `${location.href}: ${rule.id}: ${rule.help}: ${rule.nodes[0]?.html}`);
            }""";

    /** Half a megabyte of script. */
    private static final String RULES = AxeBuilder.getAxeScript();

    private Axe() {}

    /** What all rules find serious or worse. */
    public static List<String> found(Page page) {
        return found(page, List.of());
    }

    /** What one rule alone finds serious or worse. */
    static List<String> found(Page page, String rule) {
        return found(page, List.of(rule));
    }

    // The browser reads the rules once for all that is asked of a page.
    private static List<String> found(Page page, List<String> rules) {
        if (!Boolean.TRUE.equals(page.evaluate("'axe' in window"))) {
            page.evaluate(RULES);
        }
        return ((List<?>) page.evaluate(ASKED, rules))
                .stream().map(String::valueOf).toList();
    }
}
