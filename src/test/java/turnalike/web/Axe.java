package turnalike.web;

import com.deque.html.axecore.args.AxeRunOptions;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Page;
import java.util.List;
import java.util.Set;

/** The axe-core rules, asked of a page of one frame. */
public final class Axe {
    private static final Set<String> SERIOUS = Set.of("serious", "critical");

    private Axe() {}

    /** What all rules find serious or worse. */
    public static List<String> found(Page page) {
        return found(page, rules(page));
    }

    /** What one rule alone finds serious or worse. */
    static List<String> found(Page page, String rule) {
        return found(page, rules(page).withRules(List.of(rule)));
    }

    // What passed is not written out node by node: it is thousands, read by nobody, and took longer than the asking.
    private static AxeBuilder rules(Page page) {
        AxeRunOptions options = new AxeRunOptions();
        options.setResultTypes(List.of("violations"));
        return new AxeBuilder(page).options(options).setLegacyMode(true);
    }

    private static List<String> found(Page page, AxeBuilder rules) {
        return rules.analyze().getViolations().stream()
                .filter(rule -> SERIOUS.contains(rule.getImpact()))
                .map(rule -> said(page, rule))
                .toList();
    }

    private static String said(Page page, Rule rule) {
        String where = rule.getNodes().isEmpty() ? "" : rule.getNodes().get(0).getHtml();
        return "%s: %s: %s: %s".formatted(page.url(), rule.getId(), rule.getHelp(), where);
    }
}
