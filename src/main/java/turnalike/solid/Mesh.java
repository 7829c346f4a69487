package turnalike.solid;

import java.util.List;
import turnalike.outline.Outline;

/**
 * The turned solid as a closed skin of triangles, for programs that print or show bodies. The piece stands upright: its axis is the z axis,
 * its datum end lies at z = 0, and the flats of its squares look along x and y.
 *
 * <p>Closed means: every edge is shared by two triangles that run along it in opposite directions. Rounds are polygons of the circle's own
 * area, so their corners stand out, and their flats lie in, by at most 2 in 10,000 of the radius; curves along the piece are straight
 * between rings that stand close enough for {@link #SHARE} of the volume.
 *
 * @param corners each once, in millimetres
 * @param facets triangles of three corners, anticlockwise seen from outside
 */
public record Mesh(List<Corner> corners, List<Facet> facets) {
    /** How far the volume of a skin may be off, as a share of the exact one, {@link Solid#volumeMm3}. */
    public static final double SHARE = 6e-5;

    /**
     * A corner, in millimetres.
     *
     * @param xMm across the piece
     * @param yMm across the piece, at right angles to x
     * @param zMm along the piece, from its datum end
     */
    public record Corner(double xMm, double yMm, double zMm) {}

    /**
     * A triangle, by its corners' indices from 0.
     *
     * @param first corner
     * @param second corner
     * @param third corner
     */
    public record Facet(int first, int second, int third) {}

    public Mesh {
        corners = List.copyOf(corners);
        facets = List.copyOf(facets);
    }

    /**
     * {@return the skin of the solid of that outline; its volume is true to {@link #SHARE}}
     *
     * <p>Costs some 256 triangles a ring; a spindle has a few hundred rings. Where the outline comes to a point the skin does too; what is
     * nearer to the axis, or to the ring before, than a millionth of the length counts as on it.
     *
     * @param outline of the piece
     */
    public static Mesh of(Outline outline) {
        return new MeshMaker(MeshRings.of(outline)).mesh();
    }

    /** {@return the volume within, in cubic millimetres: Σ a·(b × c)/6 over all triangles, positive where they look outwards} */
    public double volumeMm3() {
        double sum = 0;
        for (Facet facet : facets) {
            Corner a = corners.get(facet.first());
            Corner b = corners.get(facet.second());
            Corner c = corners.get(facet.third());
            sum += a.xMm() * (b.yMm() * c.zMm() - b.zMm() * c.yMm())
                    + a.yMm() * (b.zMm() * c.xMm() - b.xMm() * c.zMm())
                    + a.zMm() * (b.xMm() * c.yMm() - b.yMm() * c.xMm());
        }
        return sum / 6;
    }
}
