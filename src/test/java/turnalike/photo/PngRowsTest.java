package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Point;
import java.awt.Transparency;
import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.SplittableRandom;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** Pictures of every kind that is read row by row, against Java's own reader. */
class PngRowsTest {
    private static final int WIDTH = 67;

    private static final int HEIGHT = 41;

    /** Smooth with some noise, so that the writer takes each kind of filter somewhere. */
    private static BufferedImage image(int samples, int bits) {
        int type = bits == 8 ? DataBuffer.TYPE_BYTE : DataBuffer.TYPE_USHORT;
        int most = (1 << bits) - 1;
        WritableRaster raster = Raster.createInterleavedRaster(type, WIDTH, HEIGHT, samples, new Point());
        SplittableRandom dice = new SplittableRandom(samples * 100L + bits);
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                for (int c = 0; c < samples; c++) {
                    double value =
                            0.5 + 0.3 * Math.sin(x / 9.0 + c) + 0.15 * Math.cos(y / 5.0) + 0.04 * dice.nextDouble();
                    raster.setSample(x, y, c, y % 7 == 3 ? dice.nextInt(most + 1) : (int) (value * most));
                }
            }
        }
        boolean alpha = samples % 2 == 0;
        ColorSpace space = ColorSpace.getInstance(samples < 3 ? ColorSpace.CS_GRAY : ColorSpace.CS_sRGB);
        int shows = alpha ? Transparency.TRANSLUCENT : Transparency.OPAQUE;
        return new BufferedImage(new ComponentColorModel(space, alpha, false, shows, type), raster, false, null);
    }

    private static byte[] png(BufferedImage image) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        assertThat(ImageIO.write(image, "png", bytes)).isTrue();
        return bytes.toByteArray();
    }

    @Test
    void each_kind_is_read_as_java_reads_it() throws IOException, Unsure {
        for (int samples = 1; samples <= 4; samples++) {
            for (int bits = 8; bits <= 16; bits += 8) {
                byte[] bytes = png(image(samples, bits));
                assertThat(PngRows.reads(bytes)).isTrue();
                byte[] ours = PngRows.decode(bytes, PictureFile.read(bytes));
                int colours = PngRows.pixelBytes(bytes);
                Raster theirs = ImageIO.read(new ByteArrayInputStream(bytes)).getRaster();
                for (int i = 0; i < WIDTH * HEIGHT; i++) {
                    int[] pixel = theirs.getPixel(i % WIDTH, i / WIDTH, new int[samples]);
                    int alpha = samples % 2 == 0 ? pixel[samples - 1] >> (bits - 8) : 255;
                    for (int c = 0; c < colours; c++) {
                        int over = 255 + ((pixel[c] >> (bits - 8)) - 255) * alpha / 255;
                        assertThat(ours[i * colours + c] & 0xFF)
                                .as("%d samples of %d bits, pixel %d", samples, bits, i)
                                .isEqualTo(over);
                    }
                }
            }
        }
    }

    @Test
    void a_palette_is_left_to_java() throws IOException {
        assertThat(PngRows.reads(png(new BufferedImage(9, 9, BufferedImage.TYPE_BYTE_INDEXED))))
                .isFalse();
    }

    @Test
    void fewer_rows_than_the_header_promises_are_noticed() throws IOException, Unsure {
        byte[] bytes = png(image(3, 8));
        PictureFile file = PictureFile.read(bytes);
        PictureFile taller = new PictureFile("png", WIDTH, HEIGHT + 1, file.exif(), false, false, false);
        assertThatThrownBy(() -> PngRows.decode(bytes, taller)).isInstanceOf(Unsure.class);
        byte[] none = Arrays.copyOf(bytes, bytes.length);
        // The first data chunk's name: without it nothing is left to unpack.
        none[37] = 'X';
        assertThatThrownBy(() -> PngRows.decode(none, file)).isInstanceOf(Unsure.class);
    }
}
