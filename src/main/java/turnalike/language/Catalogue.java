package turnalike.language;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * English lines and what to say for them. In the file an entry is an English line and, on the next, after a tab, its translation. In both
 * {@code #} stands for a figure and {@code *} for any words, which are looked up in turn; a translation that needs them in another order
 * numbers them: {@code #2}, {@code *1}. A line that has no entry is looked up by its sentences and clauses.
 */
final class Catalogue {
    /** Lines kept that were put together already; a shop's page has some two thousand. */
    private static final int REMEMBERED = 20_000;

    /** A line of more parts than these is a list of somebody's own names. */
    private static final int MOST_PARTS = 40;

    /** Any words: a name or a few, no sentences. */
    private static final String ANY = "([^.;:!?]{1,60}?)";

    private static final Pattern AROUND = Pattern.compile("(?s)([\\s\u00a0]*+)(.*?)([\\s\u00a0]*)");
    private static final Pattern BLANKS = Pattern.compile("[\\s\u00a0]+");

    private static final Pattern LETTERS = Pattern.compile("\\p{L}{2}");
    private static final Pattern BREAKS = Pattern.compile("(?<=[.;:,?!|·–]) | (?=[(–·|])|(?<=\\)) ");
    private static final Map<Language, Catalogue> READ = new ConcurrentHashMap<>();

    private final Map<String, String> entries = new HashMap<>();
    private final List<Shaped> shaped = new ArrayList<>();
    private final Map<String, Optional<String>> frames = new ConcurrentHashMap<>();
    private final Map<String, Optional<String>> wholes = new ConcurrentHashMap<>();

    /** An entry with any words in it; what stands before, after and between them is looked for first, since most entries fail by that. */
    private record Shaped(String begins, String longest, String ends, Pattern english, String translation) {
        Optional<Matcher> in(String frame) {
            if (!frame.startsWith(begins) || !frame.endsWith(ends) || !frame.contains(longest)) {
                return Optional.empty();
            }
            return Optional.of(english.matcher(frame)).filter(Matcher::matches);
        }
    }

    Catalogue(String text) {
        String english = "";
        for (String line : text.lines().toList()) {
            if (line.startsWith("\t")) {
                add(english, line.strip());
            } else if (!line.isBlank() && !line.startsWith("//")) {
                english = line.strip();
            }
        }
    }

    static Catalogue of(Language language) {
        return READ.computeIfAbsent(language, Catalogue::read);
    }

    private static Catalogue read(Language language) {
        String name = language.code() + ".txt";
        try (InputStream in = Catalogue.class.getResourceAsStream("/turnalike/language/" + name)) {
            if (in == null) {
                throw new IllegalStateException("no catalogue " + name);
            }
            return new Catalogue(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void add(String english, String translation) {
        entries.put(english, translation);
        if (english.contains("*")) {
            List<String> told = List.of(english.split("\\*", -1));
            String pattern = told.stream().map(Pattern::quote).collect(Collectors.joining(ANY));
            shaped.add(new Shaped(
                    told.get(0),
                    Collections.max(told, Comparator.comparingInt(String::length)),
                    told.get(told.size() - 1),
                    Pattern.compile(pattern),
                    translation));
        }
    }

    /** {@return the English lines that have a translation} */
    List<String> english() {
        return entries.keySet().stream().sorted().toList();
    }

    /** {@return the translation of that entry, its slots as they are written} */
    Optional<String> exactly(String english) {
        return Optional.ofNullable(entries.get(english));
    }

    /** {@return the translation; what is not known stays, its figures written with a comma} */
    String say(String english) {
        return find(english).orElseGet(() -> piecemeal(english));
    }

    /** What is known of a line, longest stretches first, the rest as it is: a turner's own names among our words. */
    private String piecemeal(String english) {
        List<Integer> starts = new ArrayList<>(List.of(0));
        List<Integer> ends = new ArrayList<>();
        Matcher breaks = BREAKS.matcher(english);
        while (breaks.find() && starts.size() < MOST_PARTS) {
            ends.add(breaks.start());
            starts.add(breaks.end());
        }
        ends.add(english.length());
        StringBuilder out = new StringBuilder();
        for (int part = 0; part < starts.size(); ) {
            int last = ends.size() - 1;
            Optional<String> said = find(english.substring(starts.get(part), ends.get(last)));
            while (last > part && said.isEmpty()) {
                last--;
                said = find(english.substring(starts.get(part), ends.get(last)));
            }
            String stretch = english.substring(starts.get(part), ends.get(last));
            out.append(part == 0 ? "" : " ").append(said.orElseGet(() -> Figures.localised(stretch)));
            part = last + 1;
        }
        return out.toString();
    }

    /** {@return the translation of the whole line; empty where a part that has words is not known} */
    Optional<String> find(String english) {
        Matcher blanks = AROUND.matcher(english);
        if (!blanks.matches() || blanks.group(2).isEmpty()) {
            return Optional.of(english);
        }
        if (Slots.isTaken(english)) {
            return Optional.empty();
        }
        String line = Slots.plain(BLANKS.matcher(blanks.group(2)).replaceAll(" "));
        Figures figures = Figures.of(line);
        if (!LETTERS.matcher(figures.frame()).find()) {
            return Optional.of(Figures.localised(english));
        }
        // Lists first, and whole before in parts: "strikes #" and then more figures would be a sentence that goes on
        // after its end.
        Figures lists = Figures.ofLists(line);
        return filled(lists, whole(lists.frame()))
                .or(() -> filled(figures, whole(figures.frame())))
                .or(() -> filled(lists, frame(lists.frame())))
                .or(() -> filled(figures, frame(figures.frame())))
                .or(() -> bounded(line, figures))
                .map(found -> blanks.group(1) + Slots.asWas(found) + blanks.group(3));
    }

    /** What is told by a figure is told as well where the figure is too small to tell: "off by under 0.01 mm" by "off by # mm". */
    private Optional<String> bounded(String line, Figures plain) {
        Figures bounds = Figures.ofBounds(line, entries.getOrDefault(Figures.UNDER, Figures.UNDER));
        return bounds.frame().equals(plain.frame()) ? Optional.empty() : filled(bounds, frame(bounds.frame()));
    }

    private Optional<String> filled(Figures figures, Optional<String> frame) {
        return frame.map(found -> Slots.filled(found, figures.figures(), inch()));
    }

    /** The translation with {@code #1}, {@code #2} … for the figures of the line, whichever way it was put together. */
    private Optional<String> frame(String frame) {
        return remembered(frames, frame, each -> whole(each)
                .or(() -> inOtherCase(each))
                .or(() -> stopped(each))
                .or(() -> parts(each)));
    }

    /** Before it is parted: a line that only its stop keeps from an entry is no line of clauses, some of which any words would fit. */
    private Optional<String> stopped(String frame) {
        int last = frame.length() - 1;
        if (last < 1 || ".,;:?!".indexOf(frame.charAt(last)) < 0) {
            return Optional.empty();
        }
        String bare = frame.substring(0, last);
        return whole(bare).or(() -> inOtherCase(bare)).map(said -> said + frame.charAt(last));
    }

    private static Optional<String> remembered(
            Map<String, Optional<String>> memory, String frame, Function<String, Optional<String>> work) {
        Optional<String> known = memory.get(frame);
        if (known == null) {
            known = work.apply(frame);
            if (memory.size() > REMEMBERED) {
                memory.clear();
            }
            memory.put(frame, known);
        }
        return known;
    }

    private Optional<String> whole(String frame) {
        return remembered(wholes, frame, each -> entry(each).or(() -> inOtherUnit(each)));
    }

    private Optional<String> inOtherUnit(String frame) {
        OtherUnit lengths = new OtherUnit(inch());
        String other = OtherUnit.of(frame);
        String weighed = OtherMassUnit.swapped(frame);
        String both = OtherMassUnit.swapped(other);
        return other(frame, other)
                .map(lengths::back)
                .or(() -> other(frame, weighed).map(OtherMassUnit::swapped))
                .or(() -> weighed.equals(frame)
                        ? Optional.empty()
                        : other(other, both).map(OtherMassUnit::swapped).map(lengths::back));
    }

    private Optional<String> other(String frame, String other) {
        return other.equals(frame) ? Optional.empty() : entry(other);
    }

    private String inch() {
        return entries.getOrDefault("in", "in");
    }

    private Optional<String> entry(String frame) {
        String exactly = entries.get(frame);
        if (exactly != null && !frame.contains("*")) {
            return Optional.of(Slots.numbered(exactly));
        }
        for (Shaped each : shaped) {
            Optional<Matcher> found = each.in(frame);
            if (found.isPresent()) {
                return Optional.of(withWords(each.translation(), frame, found.get()));
            }
        }
        return Optional.empty();
    }

    /** Begun with a small letter where the entry has a capital, or the other way round; a German noun keeps its own. */
    private Optional<String> inOtherCase(String frame) {
        int first = frame.codePointAt(0);
        String rest = frame.substring(Character.charCount(first));
        if (Character.isLowerCase(first)) {
            return whole(Character.toString(Character.toUpperCase(first)) + rest);
        }
        return Character.isUpperCase(first)
                ? whole(Character.toString(Character.toLowerCase(first)) + rest)
                        .map(said -> Character.toUpperCase(said.charAt(0)) + said.substring(1))
                : Optional.empty();
    }

    /** Each sentence by itself, else each clause; all or none. */
    private Optional<String> parts(String frame) {
        Matcher breaks = BREAKS.matcher(frame);
        while (breaks.find()) {
            String head = frame.substring(0, breaks.start());
            String tail = frame.substring(breaks.end());
            Optional<String> first = part(head);
            if (first.isPresent()) {
                Optional<String> rest =
                        frame(tail).or(() -> wordless(tail)).map(said -> Slots.shifted(said, Slots.count(head)));
                if (rest.isPresent()) {
                    return Optional.of(first.get() + " " + rest.get());
                }
            }
        }
        return bared(frame);
    }

    private Optional<String> part(String text) {
        return whole(text).or(() -> inOtherCase(text)).or(() -> bared(text)).or(() -> wordless(text));
    }

    /** Without the stop at its end or the brackets round it. */
    private Optional<String> bared(String text) {
        if (text.length() > 2 && text.startsWith("(") && text.endsWith(")")) {
            return frame(text.substring(1, text.length() - 1)).map(said -> "(" + said + ")");
        }
        char last = text.charAt(text.length() - 1);
        if (text.length() > 1 && ".,;:?!".indexOf(last) >= 0) {
            return part(text.substring(0, text.length() - 1)).map(said -> said + last);
        }
        return Optional.empty();
    }

    private static Optional<String> wordless(String text) {
        return LETTERS.matcher(text).find() ? Optional.empty() : Optional.of(Slots.numbered(text));
    }

    private String withWords(String translation, String frame, Matcher found) {
        List<String> said = new ArrayList<>();
        for (int i = 1; i <= found.groupCount(); i++) {
            String words = found.group(i);
            int before = Slots.count(frame.substring(0, found.start(i)));
            said.add(Slots.shifted(frame(words).orElseGet(() -> Slots.numbered(words)), before));
        }
        // The entry's own figures are those of the line that stand outside the words.
        List<Integer> own = new ArrayList<>();
        int figure = 0;
        for (int at = 0; at < frame.length(); at++) {
            if (frame.charAt(at) == '#') {
                figure++;
                if (!inWords(found, at)) {
                    own.add(figure);
                }
            }
        }
        int[] next = new int[2];
        return Slots.SLOT.matcher(translation).replaceAll(slot -> {
            boolean isFigure = slot.group(1).equals("#");
            int at = slot.group(2).isEmpty() ? next[isFigure ? 0 : 1]++ : Integer.parseInt(slot.group(2)) - 1;
            return Matcher.quoteReplacement(isFigure ? "#" + (char) (own.get(at) + Slots.BASE) : said.get(at));
        });
    }

    private static boolean inWords(Matcher found, int at) {
        for (int i = 1; i <= found.groupCount(); i++) {
            if (at >= found.start(i) && at < found.end(i)) {
                return true;
            }
        }
        return false;
    }
}
