package turnalike.drawing.model;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import turnalike.drawing.svg.SvgText;
import turnalike.solid.Mesh;

/**
 * Writes a 3MF file: a zip with the model as XML, in millimetres, one object of the piece's name (3MF Consortium, Core Specification 1.x,
 * from memory: parts, namespaces, units and the rule that the build stands where no coordinate is below zero).
 */
public final class ThreeMfFile {
    private static final String TYPES = """
            <?xml version="1.0" encoding="UTF-8"?>
            <Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">
            <Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>
            <Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/>
            </Types>
            """;

    private static final String RELATIONS = """
            <?xml version="1.0" encoding="UTF-8"?>
            <Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">
            <Relationship Target="/3D/3dmodel.model" Id="rel0" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/>
            </Relationships>
            """;

    /** Any fixed time, so that the same piece gives the same bytes; the earliest that a zip knows. */
    private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

    /** Ten millionths of a millimetre: finer than two corners ever stand apart. */
    private static final double FINEST = 1e7;

    private ThreeMfFile() {}

    /**
     * The file's bytes; the same mesh and name give the same.
     *
     * @param name the object's, and the file's title
     */
    public static byte[] of(Mesh mesh, String name) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            part(zip, "[Content_Types].xml", TYPES);
            part(zip, "_rels/.rels", RELATIONS);
            part(zip, "3D/3dmodel.model", model(mesh, name));
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible); // memory takes everything
        }
        return bytes.toByteArray();
    }

    private static void part(ZipOutputStream zip, String name, String text) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(NO_TIME);
        zip.putNextEntry(entry);
        zip.write(text.getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }

    private static String model(Mesh mesh, String name) {
        String plain = SvgText.escape(name);
        StringBuilder out = new StringBuilder(64 * mesh.facets().size());
        out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<model unit=\"millimeter\" xml:lang=\"en\"")
                .append(
                        " xmlns=\"http://schemas.microsoft.com/3dmanufacturing/core/2015/02\">\n<metadata name=\"Title\">")
                .append(plain)
                .append("</metadata>\n<metadata name=\"Application\">Turnalike</metadata>\n<resources>\n")
                .append("<object id=\"1\" type=\"model\" name=\"")
                .append(plain)
                .append("\">\n<mesh>\n<vertices>\n");
        double reach = 0;
        for (Mesh.Corner corner : mesh.corners()) {
            reach = Math.max(reach, Math.max(-corner.xMm(), -corner.yMm()));
            number(out.append("<vertex x=\""), corner.xMm());
            number(out.append("\" y=\""), corner.yMm());
            number(out.append("\" z=\""), corner.zMm());
            out.append("\"/>\n");
        }
        out.append("</vertices>\n<triangles>\n");
        for (Mesh.Facet facet : mesh.facets()) {
            out.append("<triangle v1=\"")
                    .append(facet.first())
                    .append("\" v2=\"")
                    .append(facet.second())
                    .append("\" v3=\"")
                    .append(facet.third())
                    .append("\"/>\n");
        }
        out.append(
                "</triangles>\n</mesh>\n</object>\n</resources>\n<build>\n<item objectid=\"1\" transform=\"1 0 0 0 1 0 0 0 1 ");
        // Half a step more than the outermost corner, so that rounding leaves none below zero.
        number(out, reach + 1 / FINEST);
        number(out.append(' '), reach + 1 / FINEST);
        return out.append(" 0\"/>\n</build>\n</model>\n").toString();
    }

    private static void number(StringBuilder out, double value) {
        long steps = Math.round(value * FINEST);
        out.append(steps < 0 ? "-" : "").append(Math.abs(steps) / (long) FINEST);
        long rest = Math.abs(steps) % (long) FINEST;
        if (rest != 0) {
            String digits = Long.toString((long) FINEST + rest).substring(1);
            int end = digits.length();
            while (digits.charAt(end - 1) == '0') {
                end--;
            }
            out.append('.').append(digits, 0, end);
        }
    }
}
