package turnalike.pattern;

/**
 * With what, and how, a member is cut. Common practice, no source.
 *
 * @param tool what it is cut with
 * @param what what is done, from where to where
 * @param caution what to beware of; empty for none
 */
public record CutMethod(Tool tool, String what, String caution) {
    /** Without a caution. */
    static CutMethod with(Tool tool, String what) {
        return new CutMethod(tool, what, "");
    }

    /** With the skew, and what everybody is told of it. */
    static CutMethod withSkew(String what) {
        return new CutMethod(Tool.SKEW, what, "keep the bevel rubbing; a skew's upper point catches");
    }
}
