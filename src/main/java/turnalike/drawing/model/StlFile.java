package turnalike.drawing.model;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import turnalike.solid.Mesh;

/**
 * Writes a binary STL: 80 bytes that nobody reads, the number of triangles, and for each its normal and its three corners as 4-byte numbers,
 * least byte first, and two bytes of nothing (the form as every printing program has it; from memory). The format knows no unit; these are
 * millimetres, as printing programs take them.
 */
public final class StlFile {
    private static final int HEADER = 80;
    private static final int TRIANGLE = 50;

    private StlFile() {}

    /**
     * The file's bytes; the same mesh and name give the same.
     *
     * @param name read by people only, at the head of the file
     */
    public static byte[] of(Mesh mesh, String name) {
        int count = mesh.facets().size();
        ByteBuffer out = ByteBuffer.allocate(HEADER + 4 + TRIANGLE * count).order(ByteOrder.LITTLE_ENDIAN);
        out.put(header(name)).position(HEADER).putInt(count);
        for (Mesh.Facet facet : mesh.facets()) {
            Mesh.Corner a = mesh.corners().get(facet.first());
            Mesh.Corner b = mesh.corners().get(facet.second());
            Mesh.Corner c = mesh.corners().get(facet.third());
            normal(out, a, b, c);
            corner(out, a);
            corner(out, b);
            corner(out, c);
            out.putShort((short) 0);
        }
        return out.array();
    }

    /** Beginning with any word but "solid", by which some programs take a file for the form in plain text. */
    private static byte[] header(String name) {
        String text = "Turnalike, mm, axis z: " + name.replaceAll("[^\\x20-\\x7e]", "?");
        return text.substring(0, Math.min(text.length(), HEADER)).getBytes(StandardCharsets.US_ASCII);
    }

    /** (b − a) × (c − a), of length 1; zero where the triangle has no area, which readers work out themselves. */
    private static void normal(ByteBuffer out, Mesh.Corner a, Mesh.Corner b, Mesh.Corner c) {
        double ux = b.xMm() - a.xMm();
        double uy = b.yMm() - a.yMm();
        double uz = b.zMm() - a.zMm();
        double vx = c.xMm() - a.xMm();
        double vy = c.yMm() - a.yMm();
        double vz = c.zMm() - a.zMm();
        double nx = uy * vz - uz * vy;
        double ny = uz * vx - ux * vz;
        double nz = ux * vy - uy * vx;
        double length = Math.sqrt(nx * nx + ny * ny + nz * nz);
        double per = length > 0 ? 1 / length : 0;
        out.putFloat((float) (nx * per)).putFloat((float) (ny * per)).putFloat((float) (nz * per));
    }

    private static void corner(ByteBuffer out, Mesh.Corner corner) {
        out.putFloat((float) corner.xMm()).putFloat((float) corner.yMm()).putFloat((float) corner.zMm());
    }
}
