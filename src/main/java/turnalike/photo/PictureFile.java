package turnalike.photo;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.zip.CRC32;

/**
 * A picture's file walked through from end to end before a pixel is decoded: what kind it is, how large it says it is, the camera's data, and
 * whether it is whole. Java's own readers fill what a cut file lacks with grey and call it a warning at most.
 *
 * <p>Markers are from memory of ITU-T T.81 (JPEG), annex B, chunks of the W3C's PNG specification.
 *
 * @param format {@code "jpeg"} or {@code "png"}
 * @param width stored pixels in a row, above zero
 * @param height stored rows, above zero
 * @param exif the camera's data, from its byte order mark on
 * @param coarseAcross whether a JPEG keeps colour for every other column only
 * @param coarseDown whether it does so for every other row
 * @param inOneScan whether it is a JPEG that has its rows one after the other, whole
 */
record PictureFile(
        String format,
        int width,
        int height,
        Optional<byte[]> exif,
        boolean coarseAcross,
        boolean coarseDown,
        boolean inOneScan) {
    /** From so many pixels on a picture is not decoded. One of 50 megapixels has some more than its name says: they are counted in whole ones. */
    static final long TOO_MANY = 51_000_000;

    private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A};

    /** Other formats' first bytes; from memory. */
    private static final Map<String, String> OTHER_KINDS =
            Map.of("GIF8", "GIF", "BM", "BMP", "II*\0", "TIFF or raw", "MM\0*", "TIFF or raw");

    private static final byte[] EXIF = {'E', 'x', 'i', 'f', 0, 0};

    static PictureFile read(byte[] bytes) throws Unsure {
        PictureFile file;
        if (startsWith(bytes, 0, PNG)) {
            file = png(bytes);
        } else if (bytes.length > 3 && marker(bytes, 0) == 0xD8) {
            file = jpeg(bytes);
        } else {
            throw new Unsure(PhotoTrace.Reason.NOT_A_PICTURE, notAPicture(bytes), "save the picture as JPEG or PNG");
        }
        if ((long) file.width * file.height >= TOO_MANY) {
            throw new Unsure(
                    PhotoTrace.Reason.TOO_LARGE,
                    "the picture is %d by %d pixels, more than 50 megapixels".formatted(file.width, file.height),
                    "make it smaller, 4000 pixels along the piece are plenty");
        }
        return file;
    }

    private static String notAPicture(byte[] bytes) {
        if (bytes.length == 0) {
            return "the file is empty";
        }
        if (bytes.length > 12 && startsWith(bytes, 4, "ftyp".getBytes(StandardCharsets.US_ASCII))) {
            return "this is a HEIC or AVIF picture, or a film, not JPEG or PNG";
        }
        for (Map.Entry<String, String> each : OTHER_KINDS.entrySet()) {
            if (startsWith(bytes, 0, each.getKey().getBytes(StandardCharsets.ISO_8859_1))) {
                return "this is a %s picture, not JPEG or PNG".formatted(each.getValue());
            }
        }
        if (startsWith(bytes, 8, "WEBP".getBytes(StandardCharsets.US_ASCII))) {
            return "this is a WEBP picture, not JPEG or PNG";
        }
        return "this is neither a JPEG nor a PNG picture";
    }

    private static PictureFile png(byte[] bytes) throws Unsure {
        ByteBuffer buffer = ByteBuffer.wrap(bytes);
        int width = 0;
        int height = 0;
        Optional<byte[]> exif = Optional.empty();
        int at = PNG.length;
        boolean data = false;
        while (true) {
            if (at + 12L > bytes.length) {
                throw cut();
            }
            int length = buffer.getInt(at);
            if (length < 0 || at + 12L + length > bytes.length) {
                throw cut();
            }
            CRC32 sum = new CRC32();
            sum.update(bytes, at + 4, length + 4);
            if ((int) sum.getValue() != buffer.getInt(at + 8 + length)) {
                throw damaged("a part of the PNG file does not agree with its own check sum");
            }
            String type = new String(bytes, at + 4, 4, StandardCharsets.US_ASCII);
            if (type.equals("IHDR") && length >= 8) {
                width = buffer.getInt(at + 8);
                height = buffer.getInt(at + 12);
            } else if (type.equals("eXIf")) {
                exif = Optional.of(Arrays.copyOfRange(bytes, at + 8, at + 8 + length));
            } else if (type.equals("acTL")) {
                throw new Unsure(
                        PhotoTrace.Reason.NOT_A_PICTURE,
                        "this is a moving picture (APNG)",
                        "save a single picture of it as JPEG or PNG");
            } else if (type.equals("IDAT")) {
                data = true;
            } else if (type.equals("IEND")) {
                break;
            }
            at += 12 + length;
        }
        if (!data) {
            throw damaged("the PNG file holds no picture");
        }
        return sized("png", width, height, exif, 0x11, false);
    }

    private static PictureFile jpeg(byte[] bytes) throws Unsure {
        int width = 0;
        int height = 0;
        int sampling = 0x11;
        Optional<byte[]> exif = Optional.empty();
        int scans = 0;
        int at = 2;
        while (true) {
            if (at + 1 >= bytes.length) {
                throw cut();
            }
            int marker = marker(bytes, at);
            if (marker < 0) {
                // Within the coded data, in which hardly a byte is a marker's.
                do {
                    at++;
                } while (at + 1 < bytes.length && bytes[at] != (byte) 0xFF);
                continue;
            }
            if (marker == 0 || marker == 0xFF || (marker >= 0xD0 && marker <= 0xD7) || marker == 1) {
                // A byte of the coded data that looks like a marker, or padding before one.
                at += marker > 0 && marker != 0xFF ? 2 : 1;
                continue;
            }
            if (marker == 0xD9) {
                break;
            }
            if (at + 3 >= bytes.length) {
                throw cut();
            }
            int length = both(bytes, at + 2);
            if (length < 2 || at + 2L + length > bytes.length) {
                throw cut();
            }
            boolean frame = marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC;
            if (frame && length >= 8) {
                height = both(bytes, at + 5);
                width = both(bytes, at + 7);
                if (bytes[at + 9] == 4) {
                    throw new Unsure(
                            PhotoTrace.Reason.NOT_A_PICTURE,
                            "this JPEG is in a printer's four colours (CMYK)",
                            "save it in a screen's colours (RGB)");
                }
                // Brightness stands first and is sampled the most often; colour, where there is any, once for each
                // unit.
                sampling = length >= 17 ? bytes[at + 11] & 0xFF : 0x11;
            } else if (marker == 0xE1 && exif.isEmpty() && startsWith(bytes, at + 4, EXIF)) {
                exif = Optional.of(Arrays.copyOfRange(bytes, at + 4 + EXIF.length, at + 2 + length));
            } else if (marker == 0xDA) {
                scans++;
            }
            at += 2 + length;
        }
        if (scans == 0) {
            throw damaged("the JPEG file holds no picture");
        }
        return sized("jpeg", width, height, exif, sampling, scans == 1);
    }

    private static PictureFile sized(
            String format, int width, int height, Optional<byte[]> exif, int sampling, boolean inOneScan)
            throws Unsure {
        if (width <= 0 || height <= 0) {
            throw damaged("the picture's header says it is %d by %d pixels".formatted(width, height));
        }
        return new PictureFile(format, width, height, exif, sampling >> 4 > 1, (sampling & 15) > 1, inOneScan);
    }

    static Unsure damaged(String what) {
        return new Unsure(PhotoTrace.Reason.DAMAGED, what, "take the file from the camera again");
    }

    private static Unsure cut() {
        return damaged("the file ends before the picture does");
    }

    /** The marker's code, or -1 where none begins. */
    private static int marker(byte[] bytes, int at) {
        return bytes[at] == (byte) 0xFF ? bytes[at + 1] & 0xFF : -1;
    }

    private static int both(byte[] bytes, int at) {
        return ((bytes[at] & 0xFF) << 8) | (bytes[at + 1] & 0xFF);
    }

    private static boolean startsWith(byte[] bytes, int at, byte[] what) {
        return at + what.length <= bytes.length && Arrays.equals(bytes, at, at + what.length, what, 0, what.length);
    }
}
