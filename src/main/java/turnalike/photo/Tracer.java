package turnalike.photo;

import turnalike.effort.Effort;

/** The stages one after the other: file, picture, body, contour, view, profile. */
final class Tracer {
    private Tracer() {}

    static PhotoTrace trace(byte[] bytes, PhotoWish wish, Effort effort) {
        try {
            PictureFile file = PictureFile.read(bytes);
            if (wish.span().isEmpty()) {
                throw new Unsure(
                        PhotoTrace.Reason.NO_SCALE,
                        "nothing says how large the piece is",
                        "give its overall length with --span");
            }
            CameraData camera = CameraData.of(file.exif());
            Picture.decode(bytes, file, camera.orientation());
            throw new Unsure(
                    PhotoTrace.Reason.NO_PIECE, "no piece was found", "take the picture against a plain ground");
        } catch (Unsure unsure) {
            return unsure.answer();
        }
    }
}
