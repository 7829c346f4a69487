package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.SplittableRandom;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import org.junit.jupiter.api.Test;

/** What is made of a picture while it is decoded, against the same made afterwards. */
class FirstPassesTest {
    private static final int WIDTH = 1210;

    private static final int HEIGHT = 973;

    @Test
    void what_is_made_while_a_jpeg_is_decoded_is_what_is_made_of_it_afterwards() throws IOException, Unsure {
        byte[] jpeg = jpeg(false);
        PictureFile file = PictureFile.read(jpeg);
        assertThat(file.inOneScan()).isTrue();
        for (int orientation = 1; orientation <= 8; orientation++) {
            FirstPasses passes = new FirstPasses();
            Picture picture = Picture.decode(jpeg, file, orientation, passes);
            passes.finish(picture);
            same(passes, picture, orientation);
        }
    }

    @Test
    void a_png_is_passed_over_once_it_is_decoded() throws IOException, Unsure {
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        ImageIO.write(image(), "png", png);
        FirstPasses passes = new FirstPasses();
        Picture picture = Picture.decode(png.toByteArray(), PictureFile.read(png.toByteArray()), 1, passes);
        passes.finish(picture);
        same(passes, picture, 1);
    }

    private static void same(FirstPasses passes, Picture picture, int orientation) {
        CoarsePicture whole = CoarsePicture.of(picture);
        GreyLines grey = new GreyLines(picture);
        grey.makeAll();
        assertThat(passes.whole().planes()).as("turned as %s says", orientation).isDeepEqualTo(whole.planes());
        assertThat(passes.grey().picture().data).isEqualTo(grey.picture().data);
    }

    @Test
    void no_row_is_told_before_it_stays_as_it_is() throws IOException, Unsure {
        byte[] jpeg = jpeg(false);
        PictureFile file = PictureFile.read(jpeg);
        Picture whole = Picture.decode(jpeg, file, 1);
        List<Integer> told = new ArrayList<>();
        Picture.decode(jpeg, file, 1, new PictureDecoder.Watch() {
            private Picture coming = whole;

            @Override
            public void begins(Picture picture) {
                coming = picture;
            }

            @Override
            public void decoded(int rows) {
                told.add(rows);
                float[] codes = new float[3];
                float[] last = new float[3];
                for (int x = 0; x < WIDTH && rows > 0; x += 7) {
                    coming.codes(x, rows - 1, codes);
                    whole.codes(x, rows - 1, last);
                    assertThat(codes).as("pixel %s of row %s", x, rows - 1).isEqualTo(last);
                }
            }
        });
        assertThat(told).hasSizeGreaterThan(10).isSorted();
    }

    @Test
    void of_a_jpeg_that_comes_in_several_scans_nothing_is_told_early() throws IOException, Unsure {
        byte[] jpeg = jpeg(true);
        PictureFile file = PictureFile.read(jpeg);
        assertThat(file.inOneScan()).isFalse();
        FirstPasses passes = new FirstPasses();
        Picture picture = Picture.decode(jpeg, file, 1, passes);
        passes.finish(picture);
        same(passes, picture, 1);
        assertThat(ImageIO.read(new ByteArrayInputStream(jpeg)).getWidth()).isEqualTo(WIDTH);
    }

    private static byte[] jpeg(boolean inScans) throws IOException {
        Iterator<ImageWriter> writers = ImageIO.getImageWritersByFormatName("jpeg");
        ImageWriter writer = writers.next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
            writer.setOutput(out);
            ImageWriteParam wish = writer.getDefaultWriteParam();
            wish.setProgressiveMode(inScans ? ImageWriteParam.MODE_DEFAULT : ImageWriteParam.MODE_DISABLED);
            writer.write(null, new IIOImage(image(), null, null), wish);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }

    private static BufferedImage image() {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        SplittableRandom dice = new SplittableRandom(3);
        for (int i = 0; i < WIDTH * HEIGHT; i++) {
            image.setRGB(i % WIDTH, i / WIDTH, dice.nextInt(1 << 24));
        }
        return image;
    }
}
