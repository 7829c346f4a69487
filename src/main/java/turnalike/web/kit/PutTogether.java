package turnalike.web.kit;

/** A view whose page holds marks for parts that are written by themselves, some of them long before. */
public interface PutTogether {
    /**
     * {@return the page as it is sent, in UTF-8}
     *
     * @param page as its template wrote it, in the words of its language
     */
    byte[] onto(String page);
}
