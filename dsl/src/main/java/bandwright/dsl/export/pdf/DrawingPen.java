// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export.pdf;

import java.io.IOException;
import java.util.List;

import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.util.Matrix;

import bandwright.dsl.geometry.plane.Arc;
import bandwright.dsl.geometry.plane.Curve;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.view.drawing.Drawing;
import bandwright.dsl.view.drawing.Mark;

/** Draws a drawing on a page: lines and arcs as such, letters as letters, at the drawing's scale. */
final class DrawingPen {
    private static final double QUARTER = StrictMath.PI / 2;

    private final PDPageContentStream stream;
    private final Pen pen;
    private final Letters letters;

    DrawingPen(Pen pen, Letters letters) {
        this.pen = pen;
        this.letters = letters;
        stream = pen.stream();
    }

    /** @param left of the drawing's box; {@code bottom} likewise, mm of paper */
    void draw(Drawing drawing, double left, double bottom) throws IOException {
        stream.saveGraphicsState();
        float scale = (float) drawing.scale();
        stream.transform(
                new Matrix(scale, 0, 0, scale, (float) (left - drawing.box().minX() * drawing.scale()), (float)
                        (bottom - drawing.box().minY() * drawing.scale())));
        stream.setLineJoinStyle(1);
        for (Mark mark : drawing.marks()) {
            if (mark instanceof Mark.Shape shape) {
                shape(shape);
            } else if (mark instanceof Mark.Stroke stroke) {
                stroke(stroke);
            } else if (mark instanceof Mark.Label label) {
                label(label);
            }
        }
        stream.restoreGraphicsState();
    }

    private void shape(Mark.Shape shape) throws IOException {
        boolean filled = shape.fill() != Mark.NONE;
        boolean edged = shape.edge() != Mark.NONE;
        if (shape.region().pieces().isEmpty() || !(filled || edged)) {
            return;
        }
        if (filled) {
            pen.fill(shape.fill());
        }
        if (edged) {
            pen.stroke(shape.edge());
            stream.setLineWidth((float) shape.edgeWidthMm());
            pen.dash(List.of());
        }
        for (Region.Piece piece : shape.region().pieces()) {
            for (Outline outline : piece.outlines()) {
                path(outline);
            }
        }
        if (filled && edged) {
            stream.fillAndStrokeEvenOdd();
        } else if (filled) {
            stream.fillEvenOdd();
        } else {
            stream.stroke();
        }
    }

    private void path(Outline outline) throws IOException {
        move(outline.curves().get(0).start());
        for (Curve curve : outline.curves()) {
            if (curve instanceof Arc arc) {
                arc(arc);
            } else {
                line(curve.end());
            }
        }
        stream.closePath();
    }

    /** PDF knows no arcs: a cubic curve for each quarter at most, whose middle lies on the circle. */
    private void arc(Arc arc) throws IOException {
        int pieces = Math.max(1, (int) Math.ceil(Math.abs(arc.sweep()) / QUARTER - 1e-9));
        double turn = arc.sweep() / pieces;
        double reach = 4.0 / 3 * StrictMath.tan(turn / 4);
        for (int i = 0; i < pieces; i++) {
            Point from = i == 0 ? arc.start() : arc.at((double) i / pieces);
            Point to = i + 1 == pieces ? arc.end() : arc.at((i + 1.0) / pieces);
            Point first = beside(arc.centre(), from, reach);
            Point second = beside(arc.centre(), to, -reach);
            stream.curveTo(
                    (float) first.x(),
                    (float) first.y(),
                    (float) second.x(),
                    (float) second.y(),
                    (float) to.x(),
                    (float) to.y());
        }
    }

    /** A point along the tangent, by a share of the radius. */
    private static Point beside(Point centre, Point on, double share) {
        return on.plus(-share * (on.y() - centre.y()), share * (on.x() - centre.x()));
    }

    private void stroke(Mark.Stroke stroke) throws IOException {
        pen.stroke(stroke.colour());
        stream.setLineWidth((float) stroke.widthMm());
        pen.dash(stroke.dash().lengthsMm());
        move(stroke.points().get(0));
        for (Point point : stroke.points().subList(1, stroke.points().size())) {
            line(point);
        }
        stream.stroke();
    }

    private void label(Mark.Label label) throws IOException {
        double length = letters.width(letters.settable(label.text()), label.sizeMm());
        double back = switch (label.anchor()) {
            case START -> 0;
            case MIDDLE -> length / 2;
            case END -> length;
        };
        Point at = label.at();
        if (label.upwards()) {
            pen.upwards(label.text(), at.x(), at.y() - back, label.sizeMm(), label.colour());
        } else {
            pen.text(label.text(), at.x() - back, at.y(), label.sizeMm(), label.colour());
        }
    }

    private void move(Point to) throws IOException {
        stream.moveTo((float) to.x(), (float) to.y());
    }

    private void line(Point to) throws IOException {
        stream.lineTo((float) to.x(), (float) to.y());
    }
}
