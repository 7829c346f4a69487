package turnalike.web.kit;

import io.javalin.config.RoutesConfig;

/** One group of pages. */
@FunctionalInterface
public interface Feature {
    /** Adds the addresses it answers. */
    void addTo(RoutesConfig routes);

    /** Nobody is served any more: ends what still goes on for somebody who waited. */
    default void close() {}
}
