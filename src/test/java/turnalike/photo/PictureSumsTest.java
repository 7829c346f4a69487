package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;

import boofcv.struct.image.GrayU8;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.SplittableRandom;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** The passes over a whole picture, which go line by line and read several bytes at once, against pixel by pixel, however it was stored. */
class PictureSumsTest {
    @Test
    void a_line_is_added_up_by_blocks_as_pixel_by_pixel_is() throws IOException, Unsure {
        for (int orientation = 1; orientation <= 8; orientation++) {
            Picture picture = picture(23, 17, orientation);
            for (int block : new int[] {1, 2, 3, 5}) {
                for (int line = 0; line + block <= (picture.turned() ? picture.width() : picture.height()); line++) {
                    compare(picture, line, block);
                }
            }
        }
    }

    private static void compare(Picture picture, int line, int block) {
        int count = (picture.turned() ? picture.height() : picture.width()) / block;
        double[] light = new double[3 * count];
        int[] grey = new int[count];
        picture.addLinear(line, block, light);
        Arrays.fill(grey, 5);
        picture.grey(line, block, grey);
        float[] linear = new float[3];
        float[] codes = new float[3];
        for (int to = 0; to < count; to++) {
            double[] sum = new double[3];
            int shade = 0;
            for (int k = to * block; k < (to + 1) * block; k++) {
                picture.linear(picture.turned() ? line : k, picture.turned() ? k : line, linear);
                for (int c = 0; c < 3; c++) {
                    sum[c] += linear[c];
                }
                for (int on = line; on < line + block; on++) {
                    picture.codes(picture.turned() ? on : k, picture.turned() ? k : on, codes);
                    shade += (int) (codes[0] + 2 * codes[1] + codes[2]);
                }
            }
            assertThat(grey[to]).as("block %s of line %s", to, line).isEqualTo(shade);
            for (int c = 0; c < 3; c++) {
                assertThat(light[3 * to + c])
                        .as("colour %s of block %s of line %s", c, to, line)
                        .isEqualTo(sum[c]);
            }
        }
    }

    @Test
    void the_coarse_picture_has_each_blocks_mean_at_its_place() throws IOException, Unsure {
        for (int orientation : new int[] {1, 3, 6, 8}) {
            Picture picture = picture(1900, 14, orientation);
            CoarsePicture coarse = CoarsePicture.of(picture);
            int block = coarse.block();
            assertThat(block).isEqualTo(3);
            float[] linear = new float[3];
            for (int i = 0; i < coarse.width() * coarse.height(); i++) {
                double[] sum = new double[3];
                for (int k = 0; k < block * block; k++) {
                    int x = i % coarse.width() * block + k % block;
                    picture.linear(x, i / coarse.width() * block + k / block, linear);
                    for (int c = 0; c < 3; c++) {
                        sum[c] += linear[c];
                    }
                }
                for (int c = 0; c < 3; c++) {
                    assertThat(coarse.planes()[c][i]).isEqualTo((float) Math.sqrt(sum[c] * (1.0 / (block * block))));
                }
            }
        }
    }

    @Test
    void the_grey_picture_has_each_blocks_mean_at_its_place() throws IOException, Unsure {
        for (int orientation : new int[] {1, 3, 6, 8}) {
            Picture picture = picture(301, 12, orientation);
            GreyLines lines = new GreyLines(picture, 2);
            lines.makeAll();
            GrayU8 grey = lines.picture();
            float[] codes = new float[3];
            for (int i = 0; i < grey.width * grey.height; i++) {
                double sum = 0;
                for (int k = 0; k < 4; k++) {
                    picture.codes(i % grey.width * 2 + k % 2, i / grey.width * 2 + k / 2, codes);
                    sum += codes[0] + 2 * codes[1] + codes[2];
                }
                assertThat(grey.data[i] & 0xFF).as("at %s", i).isEqualTo((int) Math.floor(sum / 16 + 0.5));
            }
        }
    }

    private static Picture picture(int width, int height, int orientation) throws IOException, Unsure {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        SplittableRandom dice = new SplittableRandom(orientation);
        for (int i = 0; i < width * height; i++) {
            image.setRGB(i % width, i / width, dice.nextInt(1 << 24));
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "png", bytes);
        return Picture.decode(bytes.toByteArray(), PictureFile.read(bytes.toByteArray()), orientation);
    }
}
