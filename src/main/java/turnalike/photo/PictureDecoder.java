package turnalike.photo;

import java.awt.Point;
import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.DataBufferByte;
import java.awt.image.PixelInterleavedSampleModel;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Hashtable;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageTypeSpecifier;

/** Makes a {@link Picture} of a file: by Java's own readers, and by {@link PngRows} what these would take more memory for. */
final class PictureDecoder {
    private static final int[] RED_FIRST = {0, 1, 2};

    /** A grey pixel's one byte is all its colours. */
    private static final int[] GREY = {0, 0, 0};

    /** Who wants to know how far it is. */
    interface Watch {
        /** Now a picture begins to be decoded; its pixels are to come. */
        void begins(Picture picture);

        /** So many rows as the file has them, from its first on, are there; told by the thread that decodes. */
        void decoded(int rows);
    }

    private final byte[] bytes;

    private final PictureFile file;

    private final int orientation;

    private Optional<Watch> watch = Optional.empty();

    PictureDecoder(byte[] bytes, PictureFile file, int orientation) {
        this.bytes = bytes;
        this.file = file;
        this.orientation = orientation;
    }

    /** The same decoder, which tells somebody how far it is, where Java's reader goes through the rows once. */
    PictureDecoder watchedBy(Watch one) {
        watch = Optional.of(one);
        return this;
    }

    Picture picture() throws Unsure {
        try {
            if (file.format().equals("png") && PngRows.reads(bytes)) {
                int pixelBytes = PngRows.pixelBytes(bytes);
                int[] bands = pixelBytes == 1 ? GREY : RED_FIRST;
                byte[] rows = PngRows.decode(bytes, file);
                return picture(rows, bands, pixelBytes);
            }
            return byJava();
        } catch (OutOfMemoryError tooLarge) {
            throw tooLarge();
        }
    }

    private Picture picture(byte[] data, int[] bands, int pixelBytes) {
        return new Picture(data, bands, pixelBytes, file.width(), file.height(), orientation);
    }

    private Unsure tooLarge() {
        return new Unsure(
                PhotoTrace.Reason.TOO_LARGE,
                "this picture of %d by %d pixels takes more memory to read than the program has"
                        .formatted(file.width(), file.height()),
                "make it smaller, 4000 pixels along the piece are plenty");
    }

    private Picture byJava() throws Unsure {
        BufferedImage image = image();
        if (image.getWidth() != file.width() || image.getHeight() != file.height()) {
            throw PictureFile.damaged("the picture is not of the size that its header says");
        }
        int w = image.getWidth();
        int h = image.getHeight();
        byte[] stored = stored(image);
        if (image.getSampleModel() instanceof PixelInterleavedSampleModel model
                && Arrays.equals(model.getBandOffsets(), RED_FIRST)
                && stored.length == 3 * w * h) {
            return picture(stored, RED_FIRST, 3);
        }
        return switch (image.getType()) {
            case BufferedImage.TYPE_3BYTE_BGR -> picture(stored, new int[] {2, 1, 0}, 3);
            case BufferedImage.TYPE_BYTE_GRAY -> picture(stored, GREY, 1);
            default -> picture(copied(image), RED_FIRST, 3);
        };
    }

    private BufferedImage image() throws Unsure {
        Iterator<ImageReader> readers = ImageIO.getImageReadersByFormatName(file.format());
        if (!readers.hasNext()) {
            throw new IllegalStateException("this Java has no reader for " + file.format());
        }
        ImageReader reader = readers.next();
        List<String> warnings = new ArrayList<>();
        reader.addIIOReadWarningListener((source, warning) -> warnings.add(warning));
        try (HeldBytes input = new HeldBytes(bytes)) {
            reader.setInput(input, true, true);
            ImageReadParam wish = reader.getDefaultReadParam();
            ImageTypeSpecifier usual = reader.getImageTypes(0).next();
            if (usual.getBufferedImageType() == BufferedImage.TYPE_3BYTE_BGR) {
                // In the file's own order rows are copied whole, else byte by byte.
                BufferedImage image = redFirst(usual);
                wish.setDestination(image);
                if (file.inOneScan()) {
                    watch.ifPresent(one -> tell(one, reader, stored(image)));
                }
            }
            BufferedImage image = reader.read(0, wish);
            if (warnings.stream().anyMatch(text -> text.startsWith("Premature") || text.startsWith("Corrupt"))) {
                throw PictureFile.damaged(
                        "the file's header promises more than the picture holds, or some of it is spoilt");
            }
            return image;
        } catch (IOException | RuntimeException trouble) {
            // Java's readers answer spoilt files with exceptions of many kinds; a picture in printing inks is one they
            // do not know.
            if (trouble.getCause() instanceof OutOfMemoryError) {
                throw tooLarge();
            }
            String message = String.valueOf(trouble.getMessage());
            if (message.contains("Unsupported Image Type")) {
                throw new Unsure(
                        PhotoTrace.Reason.NOT_A_PICTURE,
                        "the picture's colours are in printing inks or another kind that is not read",
                        "save it as a usual JPEG or PNG");
            }
            throw PictureFile.damaged("the picture cannot be decoded");
        } finally {
            reader.dispose();
        }
    }

    private static byte[] stored(BufferedImage image) {
        return image.getRaster().getDataBuffer() instanceof DataBufferByte buffer ? buffer.getData() : new byte[0];
    }

    /** Java's reader tells some twenty times what share of the rows it has put in place. */
    private void tell(Watch one, ImageReader reader, byte[] data) {
        one.begins(picture(data, RED_FIRST, 3));
        reader.addIIOReadProgressListener(new DecodingProgress(
                percent -> one.decoded((int) Math.floor(percent / 100 * (file.height() - 1)) - 1)));
    }

    @SuppressWarnings("JdkObsolete") // a BufferedImage is not to be made without a Hashtable
    private BufferedImage redFirst(ImageTypeSpecifier usual) {
        int row = 3 * file.width();
        WritableRaster raster = Raster.createInterleavedRaster(
                DataBuffer.TYPE_BYTE, file.width(), file.height(), row, 3, RED_FIRST, new Point());
        return new BufferedImage(usual.getColorModel(), raster, false, new Hashtable<>());
    }

    /** Other kinds as red, green and blue of one byte each; what can be seen through shows white. */
    private static byte[] copied(BufferedImage image) {
        int w = image.getWidth();
        int h = image.getHeight();
        Raster raster = image.getRaster();
        byte[] copy = new byte[w * h * 3];
        int bits = raster.getSampleModel().getSampleSize(0);
        boolean straight = image.getColorModel() instanceof java.awt.image.ComponentColorModel && bits >= 8;
        int samples = raster.getNumBands();
        int[] row = new int[w * samples];
        int to = 0;
        for (int y = 0; y < h; y++) {
            if (straight) {
                raster.getPixels(0, y, w, 1, row);
            }
            for (int x = 0; x < w; x++) {
                for (int band = 0; band < 3; band++) {
                    int code;
                    int alpha;
                    if (straight) {
                        code = row[x * samples + (samples >= 3 ? band : 0)] >> (bits - 8);
                        alpha = samples % 2 == 0 ? row[x * samples + samples - 1] >> (bits - 8) : 255;
                    } else {
                        int colour = image.getRGB(x, y);
                        code = (colour >> (16 - 8 * band)) & 0xFF;
                        alpha = colour >>> 24;
                    }
                    copy[to++] = (byte) (255 + (code - 255) * alpha / 255);
                }
            }
        }
        return copy;
    }
}
