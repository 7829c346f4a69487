package turnalike.photo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.ConvolveOp;
import java.awt.image.Kernel;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;

/** Pictures of an invented spindle that no trace can come of, each with a few words of what is to be said of it. */
public final class BadPictures {
    private BadPictures() {}

    /** One of them: its file, and what must be said of it. */
    public static final class Bad {
        private final String name;
        private final byte[] bytes;
        private final String said;

        Bad(String name, byte[] bytes, String said) {
            this.name = name;
            this.bytes = bytes;
            this.said = said;
        }

        public String name() {
            return name;
        }

        public byte[] bytes() {
            return bytes;
        }

        public String said() {
            return said;
        }
    }

    /** All but the one whose only fault is that nobody says how long the piece is. */
    public static List<Bad> of(SmallPicture good) {
        BufferedImage two = good.moved(0, -60).image();
        good.moved(0, 60).drawn(two, false);
        byte[] png = png(good.image());
        byte[] bomb = withSize(png.clone(), 40_000, 40_000);
        byte[] lying = withSize(png.clone(), 480, 1_000);
        return List.of(
                new Bad("dark.png", png(dark(good.image())), "almost black"),
                new Bad("cut.png", png(good.moved(90, 0).image()), "runs out of the picture"),
                new Bad("two.png", png(two), "more than one piece"),
                new Bad("none.png", png(empty()), "looks like a turned piece"),
                new Bad("blurred.png", png(blurred(good.image())), "blurred"),
                new Bad("tiny.png", png(new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB)), "only 1 by 1 pixels"),
                new Bad(
                        "strip.png",
                        png(new BufferedImage(8, 900, BufferedImage.TYPE_INT_RGB)),
                        "only 8 by 900 pixels"),
                new Bad("bomb.png", bomb, "more than 50 megapixels"),
                new Bad("lying.png", lying, "header promises more than the picture holds"),
                new Bad("short.png", Arrays.copyOf(png, png.length * 3 / 5), "ends before the picture does"),
                new Bad("heic.jpg", "....ftypheic........".getBytes(StandardCharsets.US_ASCII), "HEIC"),
                new Bad(
                        "words.jpg",
                        "no picture at all".getBytes(StandardCharsets.US_ASCII),
                        "neither a JPEG nor a PNG"));
    }

    private static byte[] png(BufferedImage image) {
        try (ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
            ImageIO.write(image, "png", bytes);
            return bytes.toByteArray();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    /** Another size in its header, with the check sum that belongs to it. */
    private static byte[] withSize(byte[] png, int width, int height) {
        ByteBuffer.wrap(png).putInt(16, width).putInt(20, height);
        CRC32 sum = new CRC32();
        sum.update(png, 12, 17);
        ByteBuffer.wrap(png).putInt(29, (int) sum.getValue());
        return png;
    }

    private static BufferedImage dark(BufferedImage image) {
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                int rgb = image.getRGB(x, y);
                image.setRGB(x, y, (rgb >> 4) & 0x0F0F0F);
            }
        }
        return image;
    }

    private static BufferedImage empty() {
        BufferedImage image = new BufferedImage(400, 300, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setColor(new Color(180, 178, 170));
        pen.fillRect(0, 0, 400, 300);
        pen.dispose();
        return image;
    }

    private static BufferedImage blurred(BufferedImage image) {
        float[] mean = new float[9];
        Arrays.fill(mean, 1 / 9f);
        BufferedImage out = image;
        for (int round = 0; round < 16; round++) {
            BufferedImage soft = new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_RGB);
            new ConvolveOp(new Kernel(3, 3, mean), ConvolveOp.EDGE_NO_OP, null).filter(out, soft);
            out = soft;
        }
        return out;
    }
}
