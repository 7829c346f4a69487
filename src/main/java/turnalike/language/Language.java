package turnalike.language;

import java.util.Arrays;
import java.util.Optional;

/** A language that page and sheets can be had in. */
public enum Language {
    ENGLISH("en", "English"),
    GERMAN("de", "Deutsch");

    private final String code;
    private final String ownName;

    Language(String code, String ownName) {
        this.code = code;
        this.ownName = ownName;
    }

    /** {@return the language's two letters, as a browser sends them} */
    public String code() {
        return code;
    }

    /** {@return its name in itself} */
    public String ownName() {
        return ownName;
    }

    /** {@return the language with that code; empty for one that is not spoken here} */
    public static Optional<Language> find(String code) {
        return Arrays.stream(values()).filter(each -> each.code.equals(code)).findFirst();
    }

    /**
     * {@return what to say for those English words}
     *
     * @param english a line or a few sentences; what the catalogue lacks stays English, its figures written as here
     */
    public String say(String english) {
        return this == ENGLISH ? english : Catalogue.of(this).say(english);
    }

    /** {@return the translation of a line to the letter, {@code *} and all; empty where the catalogue has no such line} */
    public Optional<String> translation(String english) {
        return this == ENGLISH ? Optional.empty() : Catalogue.of(this).exactly(english);
    }

    /** {@return whether all of the words in a line are translated; figures alone always are} */
    public boolean knows(String english) {
        return this == ENGLISH || Catalogue.of(this).find(english).isPresent();
    }
}
