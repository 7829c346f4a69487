package turnalike.web.kit;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.zip.GZIPOutputStream;
import org.jspecify.annotations.Nullable;
import turnalike.drawing.svg.Svg;
import turnalike.language.Language;

/**
 * The files a page loads: ours by name and no others, read once. No path a browser sends ever reaches a disk or the class path, and an
 * address carries its file's digest, so that a browser may keep it for ever.
 */
public final class Assets implements Feature {
    /** Not ours, and says nothing to a person. */
    private static final String HTMX_NAME = "htmx.js";

    /** What every page does by script: a file for each subject, in the order in which they are told of an event, and one to load. */
    private static final List<String> PAGE = List.of(
            "base", "room", "parts", "liken", "answer", "fields", "grips", "run", "carry", "sizes", "drag", "beside",
            "reveal");

    private static final String HTMX = "/META-INF/resources/webjars/htmx.org/2.0.10/dist/htmx.min.js";

    /** A file with its digest, as it is sent. */
    private static final class Asset {
        private final byte[] bytes;
        private final String type;
        private final String digest;
        private final byte[] packed;

        Asset(byte[] bytes, String type) {
            this.bytes = bytes;
            this.packed = Assets.packed(bytes);
            this.type = type;
            this.digest = Assets.digest(bytes);
        }
    }

    private final Map<String, Asset> assets = new TreeMap<>();
    private final Map<String, Asset> spoken = new ConcurrentHashMap<>();

    public Assets() {
        put("page.css", "text/css; charset=utf-8");
        assets.put("page.js", new Asset(page(), "text/javascript; charset=utf-8"));
        put("pieces.js", "text/javascript; charset=utf-8");
        put("copy.css", "text/css; charset=utf-8");
        put("copy.js", "text/javascript; charset=utf-8");
        put("clock.js", "text/javascript; charset=utf-8");
        put("match.js", "text/javascript; charset=utf-8");
        put("live.js", "text/javascript; charset=utf-8");
        put("bench.css", "text/css; charset=utf-8");
        put("bench.js", "text/javascript; charset=utf-8");
        put("icon.svg", "image/svg+xml");
        assets.put(HTMX_NAME, new Asset(resource(HTMX), "text/javascript; charset=utf-8"));
        assets.put(
                "drawing.css", new Asset(Svg.screenCss().getBytes(StandardCharsets.UTF_8), "text/css; charset=utf-8"));
        put("letters-regular.ttf", "font/ttf");
        put("letters-bold.ttf", "font/ttf");
    }

    private static byte[] page() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PAGE.forEach(part -> out.writeBytes(resource("/turnalike/web/page/" + part + ".js")));
        return out.toByteArray();
    }

    /** Adds a file of {@code resources/turnalike/web}. */
    void put(String name, String type) {
        assets.put(name, new Asset(resource("/turnalike/web/" + name), type));
    }

    /** Where the file is served that speaks that language: a script's sentences are in it, and nothing else's. */
    String address(String name, Language language) {
        boolean says = name.endsWith(".js") && !name.equals(HTMX_NAME) && language != Language.ENGLISH;
        return address(says ? language.code() + "-" + name : name);
    }

    /** Where the file is served. */
    String address(String name) {
        return "/assets/" + name + "?" + find(name).orElseThrow(() -> new NoSuchElementException(name)).digest;
    }

    /** A script in another language is made when it is first asked for: most benches never do. */
    private Optional<Asset> find(String name) {
        Asset here = assets.get(name);
        return here != null
                ? Optional.of(here)
                : Optional.ofNullable(spoken.computeIfAbsent(name, asked -> inItsLanguage(asked)));
    }

    private @Nullable Asset inItsLanguage(String name) {
        String[] parts = name.split("-", 2);
        Asset script = parts.length == 2 && name.endsWith(".js") ? assets.get(parts[1]) : null;
        Optional<Language> language = Language.find(parts[0]).filter(each -> each != Language.ENGLISH);
        if (script == null || language.isEmpty()) {
            return null;
        }
        String said = ScriptWords.in(language.get(), new String(script.bytes, StandardCharsets.UTF_8));
        return new Asset(said.getBytes(StandardCharsets.UTF_8), script.type);
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/assets/{name}", this::serve);
    }

    private void serve(Context ctx) {
        Asset asset = find(ctx.pathParam("name")).orElseThrow(() -> Refusal.notFound("that file"));
        // A stylesheet names the fonts without their digest; they are asked for again after a day.
        String kept = asset.digest.equals(ctx.queryString()) ? "max-age=31536000, immutable" : "max-age=86400";
        ctx.header("Cache-Control", kept).header("Vary", "Accept-Encoding").contentType(asset.type);
        // Packed once, when the program starts: nothing is packed while a person waits.
        boolean packed = Optional.ofNullable(ctx.header("Accept-Encoding"))
                .filter(each -> each.contains("gzip"))
                .isPresent();
        if (packed) {
            ctx.header("Content-Encoding", "gzip");
        }
        ctx.result(packed ? asset.packed : asset.bytes);
    }

    private static byte[] resource(String path) {
        try (InputStream in = Assets.class.getResourceAsStream(path)) {
            return Objects.requireNonNull(in, path).readAllBytes();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static byte[] packed(byte[] bytes) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(bytes.length / 2);
        try (GZIPOutputStream zip = new GZIPOutputStream(out)) {
            zip.write(bytes);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return out.toByteArray();
    }

    private static String digest(byte[] bytes) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
            return HexFormat.of().formatHex(digest, 0, 8);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
