package turnalike.photo;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SplittableRandom;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

/** Has POV-Ray render a scene, then does to it what a camera does: soft lens, noise, JPEG, and its data beside it. */
public final class PhotoRender {
    /** Within a pixel light adds up, as on a sensor; of itself POV-Ray adds up codes there, which moves edges by a tenth of a pixel into what is brighter. */
    private static final String LIGHT = "Antialias_Gamma=1.0";

    private PhotoRender() {}

    /** Renders anew only what the folder has not got. */
    public static byte[] jpeg(RenderedScene scene, Path folder) throws IOException, InterruptedException {
        Files.createDirectories(folder);
        String text = scene.pov();
        String stem = scene.name().replaceAll("[^a-z0-9]+", "-") + "-" + scene.width() + "-"
                + Integer.toHexString((text + LIGHT).hashCode());
        Path png = folder.resolve(stem + ".png");
        if (!Files.exists(png)) {
            Path pov = folder.resolve(stem + ".pov");
            Files.writeString(pov, text);
            Process process = new ProcessBuilder(
                            "nice",
                            "-n",
                            "5",
                            "povray",
                            "+I" + pov,
                            "+O" + png + ".part",
                            "+W" + scene.renderedWidth(),
                            "+H" + scene.renderedHeight(),
                            "+FN8",
                            "+A0.15",
                            "+R4",
                            "+AM1",
                            "-D",
                            "-GA",
                            "File_Gamma=srgb",
                            LIGHT,
                            "+WT1")
                    .redirectErrorStream(true)
                    .redirectOutput(folder.resolve(stem + ".log").toFile())
                    .start();
            if (process.waitFor() != 0) {
                throw new IOException("POV-Ray failed: see " + folder.resolve(stem + ".log"));
            }
            Path made = folder.resolve(png.getFileName() + ".part");
            Path other = folder.resolve(png.getFileName() + ".part.png");
            Files.move(Files.exists(made) ? made : other, png);
        }
        BufferedImage image = ImageIO.read(png.toFile());
        Files.write(folder.resolve(stem + ".jpg"), camera(image, scene));
        return Files.readAllBytes(folder.resolve(stem + ".jpg"));
    }

    static byte[] camera(BufferedImage image, RenderedScene scene) throws IOException {
        BufferedImage seen = noisy(
                softened(scene.lens(image), scene.blur()),
                scene.noise(),
                scene.name().hashCode());
        double equivalent = 18 / Math.tan(Math.toRadians(scene.view() / 2));
        return withFocal(jpeg(seen, 0.92f), (int) Math.round(equivalent), 1);
    }

    private static BufferedImage softened(BufferedImage image, double sigma) {
        int w = image.getWidth();
        int h = image.getHeight();
        double[][][] light = new double[3][h][w];
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                int rgb = image.getRGB(x, y);
                for (int c = 0; c < 3; c++) {
                    light[c][y][x] = toLinear((rgb >> (16 - 8 * c)) & 255);
                }
            }
        }
        double[] kernel = new double[7];
        double sum = 0;
        for (int i = 0; i < 7; i++) {
            kernel[i] = Math.exp(-(i - 3) * (i - 3) / (2 * sigma * sigma));
            sum += kernel[i];
        }
        BufferedImage soft = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
        double[][] across = new double[h][w];
        int[][] out = new int[h][w];
        for (int c = 0; c < 3; c++) {
            for (int y = 0; y < h; y++) {
                for (int x = 0; x < w; x++) {
                    double value = 0;
                    for (int i = -3; i <= 3; i++) {
                        value += kernel[i + 3] * light[c][y][Math.max(0, Math.min(w - 1, x + i))];
                    }
                    across[y][x] = value / sum;
                }
            }
            for (int y = 0; y < h; y++) {
                for (int x = 0; x < w; x++) {
                    double value = 0;
                    for (int i = -3; i <= 3; i++) {
                        value += kernel[i + 3] * across[Math.max(0, Math.min(h - 1, y + i))][x];
                    }
                    out[y][x] |= (int) Math.round(toCode(value / sum)) << (16 - 8 * c);
                }
            }
        }
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                soft.setRGB(x, y, out[y][x]);
            }
        }
        return soft;
    }

    private static BufferedImage noisy(BufferedImage image, double sigma, long seed) {
        SplittableRandom dice = new SplittableRandom(seed);
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                int rgb = image.getRGB(x, y);
                int made = 0;
                for (int c = 0; c < 3; c++) {
                    int code = (rgb >> (16 - 8 * c)) & 255;
                    code = (int) Math.round(code + sigma * dice.nextGaussian());
                    made |= Math.max(0, Math.min(255, code)) << (16 - 8 * c);
                }
                image.setRGB(x, y, made);
            }
        }
        return image;
    }

    static double toLinear(int code) {
        double v = code / 255.0;
        return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
    }

    static double toCode(double light) {
        double v = Math.max(0, Math.min(1, light));
        return 255 * (v <= 0.0031308 ? 12.92 * v : 1.055 * Math.pow(v, 1 / 2.4) - 0.055);
    }

    public static byte[] jpeg(BufferedImage image, float quality) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
            writer.setOutput(out);
            ImageWriteParam how = writer.getDefaultWriteParam();
            how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            how.setCompressionQuality(quality);
            writer.write(null, new IIOImage(image, null, null), how);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }

    /** Puts the camera's data into a JPEG: the orientation and the focal length as if on 35 mm film. */
    public static byte[] withFocal(byte[] jpeg, int equivalentMm, int orientation) {
        ByteBuffer exif = ByteBuffer.allocate(6 + 8 + 2 + 24 + 4 + 2 + 12 + 4).order(ByteOrder.BIG_ENDIAN);
        exif.put(new byte[] {'E', 'x', 'i', 'f', 0, 0, 'M', 'M', 0, 42}).putInt(8);
        exif.putShort((short) 2);
        exif.putShort((short) 0x0112)
                .putShort((short) 3)
                .putInt(1)
                .putShort((short) orientation)
                .putShort((short) 0);
        exif.putShort((short) 0x8769).putShort((short) 4).putInt(1).putInt(38);
        exif.putInt(0);
        exif.putShort((short) 1);
        exif.putShort((short) 0xA405)
                .putShort((short) 3)
                .putInt(1)
                .putShort((short) equivalentMm)
                .putShort((short) 0);
        exif.putInt(0);
        ByteBuffer all = ByteBuffer.allocate(jpeg.length + 4 + exif.position());
        all.put(jpeg, 0, 2).putShort((short) 0xFFE1).putShort((short) (exif.position() + 2));
        all.put(exif.array(), 0, exif.position()).put(jpeg, 2, jpeg.length - 2);
        return all.array();
    }
}
