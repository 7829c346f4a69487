package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.units.Length;

class PictureFileTest {
    private static BufferedImage image() {
        BufferedImage image = new BufferedImage(160, 120, BufferedImage.TYPE_INT_RGB);
        SplittableRandom dice = new SplittableRandom(1);
        for (int y = 0; y < 120; y++) {
            for (int x = 0; x < 160; x++) {
                image.setRGB(x, y, dice.nextInt(1 << 24));
            }
        }
        return image;
    }

    private static byte[] png() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image(), "png", bytes);
        return bytes.toByteArray();
    }

    private static PhotoTrace.Reason reason(byte[] bytes) {
        PhotoTrace trace = PhotoTrace.of(bytes, PhotoWish.ofSpan(Length.ofMm(400)), Effort.unlimited());
        assertThat(trace).isInstanceOf(PhotoTrace.NotSure.class);
        return ((PhotoTrace.NotSure) trace).reason();
    }

    @Test
    void other_files_are_no_pictures() {
        assertThat(reason(new byte[0])).isEqualTo(PhotoTrace.Reason.NOT_A_PICTURE);
        assertThat(reason("GIF89a and so on".getBytes(StandardCharsets.US_ASCII)))
                .isEqualTo(PhotoTrace.Reason.NOT_A_PICTURE);
        assertThat(reason("....ftypheic........".getBytes(StandardCharsets.US_ASCII)))
                .isEqualTo(PhotoTrace.Reason.NOT_A_PICTURE);
    }

    @Test
    void other_kinds_of_picture_are_named() throws IOException {
        for (String[] each : new String[][] {
            {"GIF89a......", "a GIF picture"},
            {"BM..........", "a BMP picture"},
            {"II*\0........", "a TIFF or raw picture"},
            {"RIFF....WEBPVP8 ", "a WEBP picture"}
        }) {
            assertThat(said(each[0].getBytes(StandardCharsets.ISO_8859_1))).contains(each[1]);
        }
        // One more part right behind the header, with the check sum that belongs to it.
        byte[] png = png();
        ByteBuffer moving = ByteBuffer.allocate(png.length + 20);
        byte[] part = {'a', 'c', 'T', 'L', 0, 0, 0, 2, 0, 0, 0, 0};
        CRC32 sum = new CRC32();
        sum.update(part);
        moving.put(png, 0, 33).putInt(8).put(part).putInt((int) sum.getValue()).put(png, 33, png.length - 33);
        assertThat(said(moving.array())).contains("APNG");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image(), "jpg", out);
        byte[] jpeg = out.toByteArray();
        for (int i = 2; i < jpeg.length; i++) {
            if (jpeg[i - 1] == (byte) 0xFF && jpeg[i] == (byte) 0xC0) {
                jpeg[i + 8] = 4;
                break;
            }
        }
        assertThat(said(jpeg)).contains("CMYK");
    }

    private static String said(byte[] bytes) {
        try {
            return PictureFile.read(bytes).format();
        } catch (Unsure unsure) {
            return unsure.answer().what();
        }
    }

    @Test
    void a_file_cut_short_anywhere_is_noticed() throws IOException {
        byte[] jpeg = PhotoRender.withFocal(PhotoRender.jpeg(image(), 0.9f), 26, 1);
        for (byte[] whole : new byte[][] {png(), jpeg}) {
            for (int part = 1; part <= 19; part++) {
                byte[] cut = Arrays.copyOf(whole, whole.length * part / 20);
                assertThat(reason(cut)).as("%s twentieths", part).isEqualTo(PhotoTrace.Reason.DAMAGED);
            }
        }
    }

    @Test
    void a_header_that_says_too_much_is_noticed() throws IOException {
        byte[] png = png();
        ByteBuffer.wrap(png).putInt(16, 40_000).putInt(20, 40_000);
        assertThat(reason(png)).isEqualTo(PhotoTrace.Reason.DAMAGED);
        assertThat(reason(withSum(png))).isEqualTo(PhotoTrace.Reason.TOO_LARGE);
        ByteBuffer.wrap(png).putInt(16, 160).putInt(20, 1000);
        assertThat(reason(withSum(png))).isEqualTo(PhotoTrace.Reason.DAMAGED);
        ByteBuffer.wrap(png).putInt(16, 0).putInt(20, 10);
        assertThat(reason(withSum(png))).isEqualTo(PhotoTrace.Reason.DAMAGED);
    }

    @Test
    void fifty_megapixels_are_all_that_are_fewer_than_fifty_one() throws IOException, Unsure {
        byte[] png = png();
        for (int[] size : new int[][] {{8660, 5774}, {8192, 6144}, {8501, 5999}}) {
            ByteBuffer.wrap(png).putInt(16, size[0]).putInt(20, size[1]);
            assertThat(PictureFile.read(withSum(png)).width()).isEqualTo(size[0]);
        }
        ByteBuffer.wrap(png).putInt(16, 8500).putInt(20, 6000);
        assertThat(reason(withSum(png))).isEqualTo(PhotoTrace.Reason.TOO_LARGE);
    }

    @Test
    void a_jpeg_header_that_says_too_much_is_noticed() throws IOException {
        byte[] jpeg = PhotoRender.jpeg(image(), 0.9f);
        for (int i = 2; i < jpeg.length - 9; i++) {
            if (jpeg[i] == (byte) 0xFF && jpeg[i + 1] == (byte) 0xC0) {
                ByteBuffer.wrap(jpeg).putShort(i + 5, (short) 1200);
                break;
            }
        }
        assertThat(reason(jpeg)).isEqualTo(PhotoTrace.Reason.DAMAGED);
    }

    private static byte[] withSum(byte[] png) {
        CRC32 sum = new CRC32();
        sum.update(png, 12, 17);
        ByteBuffer.wrap(png).putInt(29, (int) sum.getValue());
        return png;
    }

    @Test
    void spoilt_bytes_are_answered_whatever_they_are() throws IOException {
        SplittableRandom dice = new SplittableRandom(7);
        byte[] jpeg = PhotoRender.withFocal(PhotoRender.jpeg(image(), 0.9f), 26, 6);
        for (byte[] whole : new byte[][] {png(), jpeg}) {
            for (int round = 0; round < 150; round++) {
                byte[] spoilt = whole.clone();
                for (int k = 0; k < 1 + round % 5; k++) {
                    spoilt[dice.nextInt(Math.min(spoilt.length, round % 2 == 0 ? 700 : spoilt.length))] =
                            (byte) dice.nextInt(256);
                }
                assertThat(PhotoTrace.of(spoilt, PhotoWish.ofSpan(Length.ofMm(400)), Effort.unlimited()))
                        .isNotNull();
            }
        }
    }
}
