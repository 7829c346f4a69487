package turnalike.web.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import turnalike.drawing.svg.Typeface;

/**
 * The letters a device fetches that has none as wide: those of the page out of the whole font. Their files are made here, by
 * {@code -Dturnalike.renew=true}, and bear a name of ours: the font's licence keeps its own
 * for the whole font.
 */
final class ScreenLettersTest {
    private static final Path FILES = Path.of("src/main/resources/turnalike/web");
    private static final int MOST_BYTES = 60_000;

    /** What a browser asks of a font, but for its names. */
    private static final List<String> TABLES =
            List.of("head", "hhea", "maxp", "OS/2", "hmtx", "cmap", "glyf", "loca", "post", "cvt ", "fpgm", "prep");

    /** Latin with the letters of names in Europe, Greek for formulas, and the signs that figures, fractions, arrows and typography need. */
    private static IntStream letters() {
        IntStream latin = IntStream.concat(IntStream.rangeClosed(0x20, 0x7E), IntStream.rangeClosed(0xA0, 0xFF));
        IntStream greek = IntStream.rangeClosed(0x391, 0x3C9);
        IntStream signs = "ĄąĆćČčĎďĘęĚěĞğİıŁłŃńŇňŐőŒœŘřŚśŠšŤťŮůŰűŸŹźŻżŽž"
                .concat("–—‘’‚“”„•…′″€™→←↑↓−≈≠≤≥∞√∫∂∑∏Δ⅛⅜⅝⅞⁰⁴⁵⁶⁷⁸⁹₀₁₂₃₄")
                .codePoints();
        return IntStream.concat(IntStream.concat(latin, greek), signs);
    }

    private static Path file(Typeface face) {
        return FILES.resolve("letters-" + face.name().toLowerCase(Locale.ROOT) + ".ttf");
    }

    private static byte[] subset(Typeface face) throws IOException {
        try (InputStream in = face.ttf();
                TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in))) {
            TTFSubsetter subsetter = new TTFSubsetter(font, TABLES);
            letters().filter(face::has).forEach(subsetter::add);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            subsetter.writeToStream(out);
            return named(out.toByteArray(), "Turnalike Letters " + face.name().toLowerCase(Locale.ROOT));
        }
    }

    /** The same font with a name: without one no browser takes it. Tables as the OpenType specification lays them out. */
    private static byte[] named(byte[] font, String name) {
        ByteBuffer in = ByteBuffer.wrap(font);
        TreeMap<String, byte[]> tables = new TreeMap<>();
        for (int i = 0; i < in.getShort(4); i++) {
            int at = 12 + 16 * i;
            String tag = new String(font, at, 4, StandardCharsets.US_ASCII);
            int from = in.getInt(at + 8);
            tables.put(tag, Arrays.copyOfRange(font, from, from + in.getInt(at + 12)));
        }
        tables.put("name", nameTable(name));
        int size = 12 + 16 * tables.size();
        for (byte[] table : tables.values()) {
            size += (table.length + 3) / 4 * 4;
        }
        int highest = Integer.highestOneBit(tables.size());
        ByteBuffer out = ByteBuffer.allocate(size);
        out.putInt(0x00010000).putShort((short) tables.size()).putShort((short) (16 * highest));
        out.putShort((short) Integer.numberOfTrailingZeros(highest)).putShort((short) (16 * (tables.size() - highest)));
        int at = 12 + 16 * tables.size();
        for (Map.Entry<String, byte[]> each : tables.entrySet()) {
            byte[] table = Arrays.copyOf(each.getValue(), (each.getValue().length + 3) / 4 * 4);
            out.put(each.getKey().getBytes(StandardCharsets.US_ASCII))
                    .putInt(sum(table))
                    .putInt(at);
            out.putInt(each.getValue().length);
            System.arraycopy(table, 0, out.array(), at, table.length);
            at += table.length;
        }
        return out.array();
    }

    private static int sum(byte[] padded) {
        ByteBuffer words = ByteBuffer.wrap(padded);
        int sum = 0;
        while (words.hasRemaining()) {
            sum += words.getInt();
        }
        return sum;
    }

    /** Family, style, identifier, full name and PostScript name, in English for Windows: what readers ask for. */
    private static byte[] nameTable(String name) {
        List<String> said = List.of(name, "Regular", name, name, name.replace(" ", ""));
        int[] ids = {1, 2, 3, 4, 6};
        ByteArrayOutputStream strings = new ByteArrayOutputStream();
        ByteBuffer head = ByteBuffer.allocate(6 + 12 * ids.length);
        head.putShort((short) 0).putShort((short) ids.length).putShort((short) head.capacity());
        for (int i = 0; i < ids.length; i++) {
            byte[] each = said.get(i).getBytes(StandardCharsets.UTF_16BE);
            head.putShort((short) 3).putShort((short) 1).putShort((short) 0x409).putShort((short) ids[i]);
            head.putShort((short) each.length).putShort((short) strings.size());
            strings.writeBytes(each);
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(head.array());
        out.writeBytes(strings.toByteArray());
        return out.toByteArray();
    }

    @ParameterizedTest
    @EnumSource(Typeface.class)
    void a_device_fetches_few_bytes_and_finds_every_letter_as_wide_as_the_drawings_count_on(Typeface face)
            throws IOException {
        if (Boolean.getBoolean("turnalike.renew")) {
            Files.write(file(face), subset(face));
        }
        byte[] served = Files.readAllBytes(file(face));
        assertThat(served.length).isLessThan(MOST_BYTES);
        try (TrueTypeFont font = new TTFParser(true).parse(new RandomAccessReadBuffer(served))) {
            var map = font.getUnicodeCmapLookup(false);
            letters().filter(face::has).forEach(letter -> {
                int glyph = map.getGlyphId(letter);
                assertThat(glyph).as(Character.toString(letter)).isPositive();
                try {
                    assertThat((double) font.getAdvanceWidth(glyph) / font.getUnitsPerEm())
                            .as(Character.toString(letter))
                            .isCloseTo(face.widthMm(Character.toString(letter), 1), within(1e-6));
                } catch (IOException unreadable) {
                    throw new AssertionError(unreadable);
                }
            });
        }
    }
}
