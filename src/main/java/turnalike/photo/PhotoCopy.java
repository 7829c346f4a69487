package turnalike.photo;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * A photograph made small and upright, to be shown and kept: a new JPEG of its pixels alone. Whatever else its file said, where and when and
 * with what it was taken, and any small picture in it, is not in the copy.
 */
public final class PhotoCopy {
    /** The longer side of a copy, in pixels: enough for the width of a page. */
    public static final int LONGEST = 1600;

    /** The most bytes of a copy. */
    public static final int MOST_BYTES = 400_000;

    private static final float[] QUALITIES = {0.8f, 0.65f, 0.5f, 0.35f, 0.2f, 0.05f};

    private final byte[] jpeg;
    private final int width;
    private final int height;
    private final int fullWidth;
    private final int fullHeight;

    private PhotoCopy(byte[] jpeg, BufferedImage small, Picture full) {
        this.jpeg = jpeg;
        this.width = small.getWidth();
        this.height = small.getHeight();
        this.fullWidth = full.width();
        this.fullHeight = full.height();
    }

    /**
     * {@return the copy; empty where the file is no picture that can be read, as {@link PhotoTrace} then says}
     *
     * @param picture a JPEG or PNG file, whatever its bytes are
     */
    public static Optional<PhotoCopy> of(byte[] picture) {
        try {
            PictureFile file = PictureFile.read(picture);
            CameraData camera = CameraData.of(file.exif());
            Picture full = Picture.decode(picture, file, camera.orientation());
            BufferedImage small = small(full);
            return Optional.of(new PhotoCopy(jpeg(small), small, full));
        } catch (Unsure unreadable) {
            return Optional.empty();
        }
    }

    private static BufferedImage small(Picture full) {
        double shrink = Math.max(1, (double) Math.max(full.width(), full.height()) / LONGEST);
        int width = (int) Math.max(1, Math.round(full.width() / shrink));
        int height = (int) Math.max(1, Math.round(full.height() / shrink));
        BufferedImage out = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < height; y++) {
            int top = (int) ((long) y * full.height() / height);
            int bottom = (int) Math.max(top + 1, (y + 1L) * full.height() / height);
            for (int x = 0; x < width; x++) {
                int left = (int) ((long) x * full.width() / width);
                int right = (int) Math.max(left + 1, (x + 1L) * full.width() / width);
                out.setRGB(x, y, mean(full, left, top, right, bottom));
            }
        }
        return out;
    }

    /** The mean of a block as it was written: to be looked at, not measured. */
    private static int mean(Picture full, int left, int top, int right, int bottom) {
        float[] codes = new float[3];
        double[] sum = new double[3];
        for (int y = top; y < bottom; y++) {
            for (int x = left; x < right; x++) {
                full.codes(x, y, codes);
                for (int c = 0; c < 3; c++) {
                    sum[c] += codes[c];
                }
            }
        }
        int rgb = 0;
        for (int c = 0; c < 3; c++) {
            rgb = (rgb << 8) | (int) Math.round(sum[c] / ((right - left) * (bottom - top)));
        }
        return rgb;
    }

    private static byte[] jpeg(BufferedImage image) {
        byte[] out = {};
        for (float quality : QUALITIES) {
            out = jpeg(image, quality);
            if (out.length <= MOST_BYTES) {
                return out;
            }
        }
        return out;
    }

    private static byte[] jpeg(BufferedImage image, float quality) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        try (ByteArrayOutputStream bytes = new ByteArrayOutputStream();
                MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            writer.setOutput(out);
            ImageWriteParam how = writer.getDefaultWriteParam();
            how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            how.setCompressionQuality(quality);
            writer.write(null, new IIOImage(image, null, null), how);
            out.flush();
            return bytes.toByteArray();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        } finally {
            writer.dispose();
        }
    }

    /** {@return the copy's file: JPEG, without camera data} */
    public byte[] jpeg() {
        return jpeg.clone();
    }

    /** {@return its width in pixels} */
    public int width() {
        return width;
    }

    /** {@return its height in pixels} */
    public int height() {
        return height;
    }

    /** {@return the upright original's width in pixels} */
    public int fullWidth() {
        return fullWidth;
    }

    /** {@return the upright original's height in pixels} */
    public int fullHeight() {
        return fullHeight;
    }
}
