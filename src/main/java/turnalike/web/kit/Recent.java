package turnalike.web.kit;

import java.util.LinkedHashMap;
import java.util.Map;

/** What was used lately, by its key; of more than so much, what was used longest ago goes. Whoever shares one between threads locks it. */
public final class Recent {
    private Recent() {}

    /** {@return an empty map that keeps at most so many} */
    public static <K, V> Map<K, V> of(int most) {
        return new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1L;

            @Override
            protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
                return size() > most;
            }
        };
    }
}
