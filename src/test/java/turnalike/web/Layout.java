package turnalike.web;

import com.microsoft.playwright.Page;
import java.util.List;

/** What a person would call badly laid out: a page wider than the screen, words beyond what holds them, controls over one another. */
final class Layout {
    private Layout() {}

    /** A line for each fault of the page as it stands. */
    static List<String> found(Page page) {
        return ((List<?>) page.evaluate(FAULTS)).stream().map(String::valueOf).toList();
    }

    /** Pictures' letters that are smaller than that many pixels on the screen. */
    static List<String> lettersBelow(Page page, double px) {
        return ((List<?>) page.evaluate(LETTERS, px))
                .stream().map(String::valueOf).toList();
    }

    /**
     * What scrolls by itself may be wider than the screen, and what says the whole in a title may be cut short; what is stuck to the
     * screen lies over the rest on purpose.
     */
    private static final String FAULTS = """
            () => {
              const out = new Set();
              const wide = document.documentElement.clientWidth;
              const named = (e) => `${e.tagName.toLowerCase()}${e.id ? "#" + e.id : ""} "${(e.textContent || e.value || "").trim().slice(0, 40)}"`;
              if (document.documentElement.scrollWidth > wide) out.add(`wider than the screen: ${document.documentElement.scrollWidth}`);
              const above = (e, is) => { for (let p = e; p; p = p.parentElement) if (is(getComputedStyle(p))) return p; return null; };
              const clips = (style) => /(auto|scroll|hidden|clip)/.test(style.overflowX);
              const aside = (style) => /(sticky|fixed|absolute)/.test(style.position);
              for (const e of document.querySelectorAll("button, a, td, th, label, summary, h1, h2, h3, p, li")) {
                if (!e.checkVisibility() || getComputedStyle(e).display === "inline" || clips(getComputedStyle(e)) || e.clientWidth < 2) continue;
                if (e.scrollWidth > e.clientWidth + 1 && !e.querySelector("svg, img")) out.add(`words beyond ${named(e)}`);
                if (e.getBoundingClientRect().right > wide + 1 && !above(e.parentElement, clips)) out.add(`off the screen: ${named(e)}`);
              }
              const controls = [...document.querySelectorAll("a, button, select, input:not([type=hidden]), textarea, summary")].filter((e) => {
                const box = e.getBoundingClientRect();
                return e.checkVisibility() && box.width > 2 && box.height > 2 && box.right > 0 && !e.closest("svg") && !above(e, aside);
              });
              const boxes = controls.map((e) => [e, [...e.getClientRects()], above(e.parentElement, clips)]);
              for (let i = 0; i < boxes.length; i++) {
                for (let j = 0; j < i; j++) {
                  const [one, its, within] = boxes[i];
                  const [other, others, beside] = boxes[j];
                  if (within !== beside || one.contains(other) || other.contains(one)) continue;
                  const meet = its.some((a) => others.some((b) =>
                    Math.min(a.right, b.right) - Math.max(a.left, b.left) > 1 && Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 1));
                  if (meet) out.add(`${named(one)} lies over ${named(other)}`);
                }
              }
              return [...out];
            }
            """;

    private static final String LETTERS = """
            (least) => {
              const out = new Set();
              for (const text of document.querySelectorAll("svg text")) {
                if (!text.checkVisibility()) continue;
                const matrix = text.getScreenCTM();
                const px = parseFloat(getComputedStyle(text).fontSize) * Math.hypot(matrix.a, matrix.b);
                if (px < least) out.add(`${px.toFixed(1)} px: "${text.textContent}" in ${(text.closest("section, div") || document.body).className}`);
              }
              return [...out];
            }
            """;
}
