// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export.dxf;

import java.util.List;

import bandwright.dsl.export.PlanLayer;
import bandwright.dsl.geometry.plane.Arc;
import bandwright.dsl.geometry.plane.Curve;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;

/** Shapes on one layer: circles and arcs as such, straight outlines as one line of many corners, others piece by piece. */
record DxfShapes(DxfText dxf, String layer) {
    private static final double DEGREES = 180 / StrictMath.PI;

    /** Pieces of one circle differ by less, mm. */
    private static final double SAME_MM = 1e-9;

    void closed(Outline outline) {
        List<Curve> curves = outline.curves();
        if (curves.stream().noneMatch(Arc.class::isInstance)) {
            polyline(curves.stream().map(Curve::start).toList(), true);
        } else if (isCircle(curves)) {
            Arc arc = (Arc) curves.get(0);
            entity("CIRCLE").point(10, arc.centre().x(), arc.centre().y()).number(40, arc.radius());
        } else {
            curves.forEach(this::curve);
        }
    }

    void open(List<Point> line) {
        if (line.size() == 2) {
            line(line.get(0), line.get(1));
        } else {
            polyline(line, false);
        }
    }

    void note(PlanLayer.Note note) {
        entity("TEXT").point(10, note.at().x(), note.at().y()).number(40, note.heightMm());
        // Middle of the text on the point, both ways.
        dxf.add(1, note.text()).add(72, 4).point(11, note.at().x(), note.at().y());
    }

    private DxfText entity(String kind) {
        return dxf.add(0, kind).add(8, layer);
    }

    private static boolean isCircle(List<Curve> curves) {
        double turned = 0;
        for (Curve curve : curves) {
            if (!(curve instanceof Arc arc)
                    || !(curves.get(0) instanceof Arc first)
                    || arc.centre().distanceTo(first.centre()) > SAME_MM
                    || Math.abs(arc.radius() - first.radius()) > SAME_MM) {
                return false;
            }
            turned += arc.sweep();
        }
        return Math.abs(Math.abs(turned) - 2 * StrictMath.PI) < SAME_MM;
    }

    private void curve(Curve curve) {
        if (curve instanceof Arc arc) {
            // Always counter-clockwise.
            double from = arc.sweep() > 0 ? arc.startAngle() : arc.startAngle() + arc.sweep();
            entity("ARC").point(10, arc.centre().x(), arc.centre().y()).number(40, arc.radius());
            dxf.number(50, degrees(from)).number(51, degrees(from + Math.abs(arc.sweep())));
        } else {
            line(curve.start(), curve.end());
        }
    }

    /** From 0 to less than 360. */
    private static double degrees(double radians) {
        double degrees = radians * DEGREES;
        return degrees - 360 * Math.floor(degrees / 360);
    }

    private void line(Point from, Point to) {
        entity("LINE").point(10, from.x(), from.y()).point(11, to.x(), to.y());
    }

    private void polyline(List<Point> corners, boolean closed) {
        entity("POLYLINE").add(66, 1).point(10, 0, 0).add(70, closed ? 1 : 0);
        for (Point corner : corners) {
            entity("VERTEX").point(10, corner.x(), corner.y());
        }
        dxf.add(0, "SEQEND").add(8, layer);
    }
}
