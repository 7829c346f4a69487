package turnalike.units;

import java.util.Locale;

/** The English article before a word or a figure, counted nouns and ordinals: {@code an 8 mm wrench}, {@code 3 groups}, {@code 2nd}. */
public final class Article {
    private Article() {}

    /**
     * {@return the text with the article it is spoken with} A figure counts as it is read: {@code an 8}, {@code an 11/16}, {@code an 18},
     * {@code an 80}, {@code a 1 1/4}, {@code a 100}.
     *
     * @param text what follows the article, not empty
     */
    public static String with(String text) {
        return (beginsWithVowelSound(text) ? "an " : "a ") + text;
    }

    private static boolean beginsWithVowelSound(String text) {
        String figure = text.replaceFirst("^([0-9]*).*", "$1");
        if (figure.isEmpty()) {
            return !text.isEmpty()
                    && "aeiou".indexOf(text.toLowerCase(Locale.ROOT).charAt(0)) >= 0;
        }
        // Read as eight, eighty, eight hundred, eight thousand; eleven and eighteen, alone or before whole thousands.
        boolean leads = figure.length() % 3 == 2;
        return figure.startsWith("8") || (leads && (figure.startsWith("11") || figure.startsWith("18")));
    }

    /**
     * {@return the count with its noun: {@code 1 group}, {@code 3 groups}}
     *
     * @param count how many
     * @param noun for one, whose plural adds an s
     */
    public static String count(int count, String noun) {
        return count + " " + (count == 1 ? noun : noun + "s");
    }

    /**
     * {@return which one it is: {@code 2nd}, {@code 11th}, {@code 32nd}}
     *
     * @param number 1 or more
     */
    public static String ordinal(int number) {
        boolean teen = number / 10 % 10 == 1;
        return number
                + switch (teen ? 0 : number % 10) {
                    case 1 -> "st";
                    case 2 -> "nd";
                    case 3 -> "rd";
                    default -> "th";
                };
    }
}
