package turnalike.job.kept;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import turnalike.units.Length;

/**
 * A photograph that a pattern was copied from, kept with its job: a small JPEG, and where the piece lies in it.
 *
 * @param name the photograph's, not blank, one line
 * @param widthPx of the kept picture
 * @param heightPx of it
 * @param axis where the piece's axis runs in it
 * @param base64 the JPEG file
 */
public record KeptPhoto(String name, int widthPx, int heightPx, Axis axis, String base64) {
    /** The most letters of a picture that is kept: of the copies made here none is near it. */
    private static final int MOST = 1_000_000;

    private static final double FARTHEST_PX = 1e6;

    private static final String PICTURE = "picture";
    private static final String BASE64 = "base64";

    /** How JPEG files begin. */
    private static final String JPEG = "/9j/";

    /**
     * Where the axis runs, in pixels of the kept picture, x to the right and y down.
     *
     * @param startX of the start end
     * @param startY of it
     * @param endX of the far end
     * @param endY of it
     * @param length between both, on the piece
     */
    public record Axis(double startX, double startY, double endX, double endY, Length length) {
        public Axis {
            double apart = Math.hypot(endX - startX, endY - startY);
            double farthest = Math.max(Math.abs(startX) + Math.abs(startY), Math.abs(endX) + Math.abs(endY));
            if (!(apart >= 1 && farthest < FARTHEST_PX) || !length.isPositive() || !(length.mm() < FARTHEST_PX)) {
                throw new IllegalArgumentException("an axis has two ends apart and a length above zero");
            }
        }
    }

    public KeptPhoto {
        if (widthPx < 1 || heightPx < 1) {
            throw new IllegalArgumentException("a picture is a pixel wide and high, or more");
        }
        if (!base64.startsWith(JPEG) || base64.length() > MOST || !isBase64(base64)) {
            throw new IllegalArgumentException("the picture is no JPEG file of at most a megabyte");
        }
    }

    private static boolean isBase64(String text) {
        try {
            return Base64.getDecoder().decode(text).length > 0;
        } catch (IllegalArgumentException notOne) {
            return false;
        }
    }

    /**
     * {@return the photograph kept so}
     *
     * @param name the photograph's
     * @param widthPx of the picture
     * @param heightPx of it
     * @param axis where the piece lies in it
     * @param jpeg the picture's file
     */
    public static KeptPhoto of(String name, int widthPx, int heightPx, Axis axis, byte[] jpeg) {
        return new KeptPhoto(name, widthPx, heightPx, axis, Base64.getEncoder().encodeToString(jpeg));
    }

    /** {@return the picture's file: JPEG} */
    public byte[] jpeg() {
        return Base64.getDecoder().decode(base64);
    }

    /** {@return it as the store keeps it} */
    public PhotoResult result() {
        ObjectNode tree = KeptJson.object();
        ObjectNode picture = tree.putObject(PICTURE)
                .put("type", "image/jpeg")
                .put("width_px", widthPx)
                .put("height_px", heightPx);
        point(picture, "start_px", axis.startX, axis.startY);
        point(picture, "end_px", axis.endX, axis.endY);
        picture.put("length_mm", KeptJson.digits(axis.length.mm()));
        picture.put(BASE64, base64);
        return PhotoResult.of(name, KeptJson.line(tree));
    }

    private static void point(ObjectNode picture, String key, double x, double y) {
        picture.putArray(key).add(KeptJson.digits(x)).add(KeptJson.digits(y));
    }

    /**
     * {@return the photograph that a result holds; empty of one that holds none; {@link IllegalArgumentException} of one that cannot be shown}
     *
     * @param result as the store keeps it
     */
    public static Optional<KeptPhoto> in(PhotoResult result) {
        if (!result.json().contains("\"" + PICTURE + "\"")) {
            return Optional.empty();
        }
        JsonNode picture = KeptJson.object(result.json()).path(PICTURE);
        if (!picture.isObject()) {
            return Optional.empty();
        }
        Axis axis = new Axis(
                picture.path("start_px").path(0).asDouble(),
                picture.path("start_px").path(1).asDouble(),
                picture.path("end_px").path(0).asDouble(),
                picture.path("end_px").path(1).asDouble(),
                Length.ofMm(picture.path("length_mm").asDouble()));
        return Optional.of(new KeptPhoto(
                result.name(),
                picture.path("width_px").asInt(),
                picture.path("height_px").asInt(),
                axis,
                picture.path(BASE64).asText()));
    }

    /**
     * {@return the photograph that a job's pattern was copied from, if one is kept that can be shown}
     *
     * @param kept the job
     */
    public static Optional<KeptPhoto> of(KeptJob kept) {
        List<PhotoResult> photos = kept.photos();
        for (int i = photos.size() - 1; i >= 0; i--) {
            Optional<KeptPhoto> photo = shown(photos.get(i));
            if (photo.isPresent()) {
                return photo;
            }
        }
        return Optional.empty();
    }

    /** The store's check tells of one that cannot be shown; a job opens without its picture. */
    private static Optional<KeptPhoto> shown(PhotoResult result) {
        try {
            return in(result);
        } catch (IllegalArgumentException cannotBeShown) {
            return Optional.empty();
        }
    }

    /**
     * {@return what is wrong with the photographs that a job keeps, a line each; a job opens without those}
     *
     * @param kept the job
     */
    public static List<String> faults(KeptJob kept) {
        List<String> out = new ArrayList<>();
        for (PhotoResult each : kept.photos()) {
            try {
                in(each);
            } catch (IllegalArgumentException cannotBeShown) {
                out.add("its photograph %s cannot be shown: %s".formatted(each.name(), cannotBeShown.getMessage()));
            }
        }
        return out;
    }

    /** The result as it stands beside a history, which has the picture: told without it. */
    static ObjectNode told(PhotoResult result) {
        ObjectNode tree = KeptJson.object(result.json());
        if (tree.path(PICTURE) instanceof ObjectNode picture && picture.has(BASE64)) {
            picture.put(BASE64, "in the history");
        }
        return tree;
    }
}
