package turnalike.release;

/**
 * A library that the program ships with.
 *
 * @param name as its file has it, without the version
 * @param version of it
 * @param licence in SPDX's words, "A OR B" where its makers leave the choice; as its own Maven description gives it
 * @param address of its makers, as the same description gives it
 */
public record Library(String name, String version, String licence, String address) {
    /** {@return the name of its file} */
    public String file() {
        return "%s-%s.jar".formatted(name, version);
    }
}
