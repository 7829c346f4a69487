package turnalike.sheets;

import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.text.PDFTextStripper;

/** Reads a PDF back with PDFBox: what was stroked or filled, in millimetres from the top left of the page, and its text. */
final class PdfReading {
    private PdfReading() {}

    /** One painted path, flattened; x, y pairs by subpath. Only what the clip lets show is told by {@code clip}. */
    record Painted(int page, boolean stroked, List<Float> colour, double lineWidthMm, List<double[]> points, Box clip) {
        double width() {
            return extent(0);
        }

        double height() {
            return extent(1);
        }

        double least(int axis) {
            double least = points.get(0)[axis];
            for (double[] point : points) {
                least = Math.min(least, point[axis]);
            }
            return least;
        }

        double most(int axis) {
            double most = points.get(0)[axis];
            for (double[] point : points) {
                most = Math.max(most, point[axis]);
            }
            return most;
        }

        private double extent(int axis) {
            return most(axis) - least(axis);
        }
    }

    /** Edges in millimetres from the paper's top left. */
    record Box(double left, double top, double right, double bottom) {}

    static List<Painted> painted(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<Painted> out = new ArrayList<>();
            for (int i = 0; i < document.getNumberOfPages(); i++) {
                PDPage page = document.getPage(i);
                new Reader(page, i + 1, out).processPage(page);
            }
            return out;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String text(byte[] pdf, int page) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(false);
            stripper.setStartPage(page);
            stripper.setEndPage(page);
            return stripper.getText(document);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static final class Reader extends PDFGraphicsStreamEngine {
        private static final double MM = 25.4 / 72;
        private final int number;
        private final List<Painted> out;
        private final double heightPoints;
        private Path2D.Double path = new Path2D.Double();
        private boolean clipping;

        Reader(PDPage page, int number, List<Painted> out) {
            super(page);
            this.number = number;
            this.out = out;
            this.heightPoints = page.getMediaBox().getHeight();
        }

        @Override
        public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
            path.moveTo(p0.getX(), p0.getY());
            path.lineTo(p1.getX(), p1.getY());
            path.lineTo(p2.getX(), p2.getY());
            path.lineTo(p3.getX(), p3.getY());
            path.closePath();
        }

        @Override
        public void drawImage(PDImage image) {
            throw new AssertionError("no sheet carries an image");
        }

        @Override
        public void clip(int windingRule) {
            clipping = true;
        }

        @Override
        public void moveTo(float x, float y) {
            path.moveTo(x, y);
        }

        @Override
        public void lineTo(float x, float y) {
            path.lineTo(x, y);
        }

        @Override
        public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
            path.curveTo(x1, y1, x2, y2, x3, y3);
        }

        @Override
        public Point2D getCurrentPoint() {
            return path.getCurrentPoint();
        }

        @Override
        public void closePath() {
            path.closePath();
        }

        @Override
        public void endPath() {
            if (clipping) {
                getGraphicsState().intersectClippingPath(new Area(path));
                clipping = false;
            }
            path = new Path2D.Double();
        }

        @Override
        public void strokePath() throws IOException {
            keep(true);
        }

        @Override
        public void fillPath(int windingRule) throws IOException {
            keep(false);
        }

        @Override
        public void fillAndStrokePath(int windingRule) throws IOException {
            keep(true);
        }

        @Override
        public void shadingFill(COSName shadingName) {
            throw new AssertionError("no sheet carries a shading");
        }

        private static List<Float> listed(float[] values) {
            List<Float> out = new ArrayList<>();
            for (float value : values) {
                out.add(value);
            }
            return out;
        }

        private void keep(boolean stroked) throws IOException {
            List<double[]> points = new ArrayList<>();
            double[] c = new double[6];
            for (PathIterator i = path.getPathIterator(null, 1e-4); !i.isDone(); i.next()) {
                if (i.currentSegment(c) != PathIterator.SEG_CLOSE) {
                    points.add(new double[] {c[0] * MM, (heightPoints - c[1]) * MM});
                }
            }
            var clip = getGraphicsState().getCurrentClippingPath().getBounds2D();
            var colour = stroked
                    ? getGraphicsState().getStrokingColor()
                    : getGraphicsState().getNonStrokingColor();
            out.add(new Painted(
                    number,
                    stroked,
                    listed(colour.getComponents()),
                    getGraphicsState().getLineWidth() * MM,
                    points,
                    new Box(
                            clip.getMinX() * MM,
                            (heightPoints - clip.getMaxY()) * MM,
                            clip.getMaxX() * MM,
                            (heightPoints - clip.getMinY()) * MM)));
            path = new Path2D.Double();
        }
    }
}
