package turnalike.pattern;

/**
 * With what, and how, a member is cut. Common practice, no source.
 *
 * @param tool what it is cut with
 * @param what what is done, from where to where
 * @param caution what to beware of; empty for none
 */
public record Way(Tool tool, String what, String caution) {
    /** Without a caution. */
    static Way with(Tool tool, String what) {
        return new Way(tool, what, "");
    }

    /** With the skew, and what everybody is told of it. */
    static Way withSkew(String what) {
        return new Way(Tool.SKEW, what, "keep the bevel rubbing; a skew's upper point catches");
    }
}
