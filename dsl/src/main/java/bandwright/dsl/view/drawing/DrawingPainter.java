// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.drawing;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.view.Picture;
import bandwright.dsl.view.image.Canvas;
import bandwright.dsl.view.image.Pixels;
import bandwright.dsl.view.image.StrokeText;

/** Paints a drawing into pixels. */
public final class DrawingPainter {
    private final Drawing drawing;
    private final double pixelsPerMm;
    private final Pixels pixels;
    private final Canvas canvas;

    private DrawingPainter(Drawing drawing, int width) {
        this.drawing = drawing;
        pixelsPerMm = width / drawing.box().width();
        pixels = new Pixels(width, (int) Math.ceil(drawing.box().height() * pixelsPerMm), 0xffffff);
        canvas = new Canvas(pixels);
    }

    /** The drawing as a PNG file so many pixels wide; its height follows. */
    public static Picture picture(Drawing drawing, int width) {
        return pixels(drawing, width).toPicture(drawing.title() + ". " + drawing.description());
    }

    public static Pixels pixels(Drawing drawing, int width) {
        DrawingPainter painter = new DrawingPainter(drawing, width);
        drawing.marks().forEach(painter::paint);
        return painter.pixels;
    }

    private void paint(Mark mark) {
        if (mark instanceof Mark.Shape shape) {
            List<double[]> rings = rings(shape.region());
            if (shape.fill() != Mark.NONE) {
                canvas.fill(rings, shape.fill());
            }
            if (shape.edge() != Mark.NONE) {
                rings.forEach(ring -> canvas.stroke(closed(ring), shape.edgeWidthMm() * pixelsPerMm, shape.edge()));
            }
        } else if (mark instanceof Mark.Stroke stroke) {
            double width = stroke.widthMm() * pixelsPerMm;
            for (List<Point> run : dashes(stroke)) {
                canvas.stroke(placed(run), width, stroke.colour());
            }
        } else if (mark instanceof Mark.Label label) {
            StrokeText.draw(
                    canvas,
                    label.text(),
                    x(label.at()),
                    y(label.at()),
                    label.sizeMm() * pixelsPerMm,
                    label.anchor(),
                    label.upwards(),
                    label.colour());
        }
    }

    /** The pieces of a dashed line; dashes run on round its corners. */
    private static List<List<Point>> dashes(Mark.Stroke stroke) {
        List<Double> lengths = stroke.dash().lengthsMm();
        if (lengths.isEmpty()) {
            return List.of(stroke.points());
        }
        List<List<Point>> runs = new ArrayList<>();
        int dash = 0;
        double left = lengths.get(0);
        List<Point> run = new ArrayList<>(List.of(stroke.points().get(0)));
        for (int i = 0; i + 1 < stroke.points().size(); i++) {
            Point from = stroke.points().get(i);
            Point to = stroke.points().get(i + 1);
            double length = from.distanceTo(to);
            double at = 0;
            while (length - at > left) {
                at += left;
                Point turn = from.plus((to.x() - from.x()) * at / length, (to.y() - from.y()) * at / length);
                run.add(turn);
                if (dash % 2 == 0) {
                    runs.add(run);
                }
                run = new ArrayList<>(List.of(turn));
                dash++;
                left = lengths.get(dash % lengths.size());
            }
            left -= length - at;
            run.add(to);
        }
        if (dash % 2 == 0) {
            runs.add(run);
        }
        return runs;
    }

    private List<double[]> rings(Region region) {
        List<double[]> rings = new ArrayList<>();
        for (Region.Piece piece : region.pieces()) {
            rings.add(ring(piece.outer()));
            piece.holes().forEach(hole -> rings.add(ring(hole)));
        }
        return rings;
    }

    private double[] ring(Outline outline) {
        return placed(outline.flattened(0.1 / pixelsPerMm));
    }

    private double[] placed(List<Point> points) {
        double[] placed = new double[2 * points.size()];
        for (int i = 0; i < points.size(); i++) {
            placed[2 * i] = x(points.get(i));
            placed[2 * i + 1] = y(points.get(i));
        }
        return placed;
    }

    private static double[] closed(double[] ring) {
        double[] closed = new double[ring.length + 2];
        System.arraycopy(ring, 0, closed, 0, ring.length);
        closed[ring.length] = ring[0];
        closed[ring.length + 1] = ring[1];
        return closed;
    }

    private double x(Point point) {
        return (point.x() - drawing.box().minX()) * pixelsPerMm;
    }

    private double y(Point point) {
        return (drawing.box().maxY() - point.y()) * pixelsPerMm;
    }
}
