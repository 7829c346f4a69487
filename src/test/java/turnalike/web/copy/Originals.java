package turnalike.web.copy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import turnalike.photo.PhotoRender;
import turnalike.photo.SmallPicture;
import turnalike.photo.TurnedShape;
import turnalike.web.Served;

/** Originals made for tests: an invented spindle of 400 mm as a picture of about a pixel a millimetre, as a table, as a drawing. */
public final class Originals {
    public static final String TABLE =
            "x,diameter\n0,40\n60,40\n120,40\n120,52\n130,56\n140,52\n140,30\n200,30\n260,30\n300,30\n";

    public static final String DRAWING =
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"200mm\" height=\"60mm\" viewBox=\"0 0 200 60\">"
                    + "<path d=\"M10 20 L90 20 L90 15 L150 15 L150 45 L90 45 L90 40 L10 40 Z\"/></svg>";

    private static final TurnedShape SPINDLE = shape();

    private Originals() {}

    /** {@return the spindle that the pictures are of} */
    public static TurnedShape spindle() {
        return SPINDLE;
    }

    private static TurnedShape shape() {
        List<double[]> points = new ArrayList<>();
        points.add(new double[] {0, 20});
        double at = TurnedShape.straight(points, 0, 38, 20, 20);
        at = TurnedShape.ellipse(points, at, 24, 20, 27);
        at = TurnedShape.ellipse(points, at, 42, 20, 15.5);
        at = TurnedShape.straight(points, at, 130, 20, 26);
        at = TurnedShape.wave(points, at, 60, 26, 15);
        at = TurnedShape.ellipse(points, at, 70, 15, 21);
        TurnedShape.straight(points, at, 36, 15, 18);
        return TurnedShape.of(points);
    }

    public static SmallPicture picture() {
        return SmallPicture.of(SPINDLE);
    }

    /** As a camera writes it, with data of its own. */
    public static byte[] photograph() {
        try {
            return PhotoRender.withFocal(PhotoRender.jpeg(picture().image(), 0.95f), 36, 1);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    /** Looks at what was sent until it is done. */
    public static HttpResponse<String> done(Served served, HttpResponse<String> sent)
            throws IOException, InterruptedException {
        if (sent.statusCode() != 303) {
            return sent;
        }
        String address = sent.headers().firstValue("Location").orElseThrow();
        address = address.replaceFirst("^https?://[^/]+", "");
        HttpResponse<String> answer = served.get(address);
        while (answer.body().contains("data-running=\"yes\"")) {
            Thread.sleep(100);
            answer = served.get(address);
        }
        return answer;
    }

    /** Where a page's original is. */
    static String address(String page) {
        int at = page.indexOf("data-address=\"") + "data-address=\"".length();
        return page.substring(at, page.indexOf('"', at));
    }
}
