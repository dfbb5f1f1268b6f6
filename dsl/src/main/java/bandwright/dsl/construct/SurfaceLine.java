// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.List;
import java.util.Optional;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.geometry.plane.Arc;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Curve;
import bandwright.dsl.geometry.plane.Line;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;

/**
 * The outer (or inner) surface of a cross-section at one place across: its height and the way it faces.
 *
 * @param height distance from the finger's axis, mm
 * @param acrossFacing across part of the unit vector square to the surface, pointing out of the metal
 * @param outFacing out part of it
 */
public record SurfaceLine(double across, double height, double acrossFacing, double outFacing) {
    /** The outermost surface, if the section reaches this place. */
    public static Optional<SurfaceLine> outer(Outline outline, double across) {
        return find(outline, across, true);
    }

    /** The innermost surface, if the section reaches this place. */
    public static Optional<SurfaceLine> inner(Outline outline, double across) {
        return find(outline, across, false);
    }

    /** The same place seen from the other side of the surface. */
    SurfaceLine turned() {
        return new SurfaceLine(across, height, -acrossFacing, -outFacing);
    }

    private static Optional<SurfaceLine> find(Outline outline, double across, boolean outer) {
        SurfaceLine best = null;
        for (Curve curve : outline.counterClockwise().curves()) {
            SurfaceLine here = curve instanceof Arc arc ? onArc(arc, across, outer) : onLine((Line) curve, across);
            if (here != null && (best == null || (outer ? here.height > best.height : here.height < best.height))) {
                best = here;
            }
        }
        return Optional.ofNullable(best);
    }

    private static @Nullable SurfaceLine onLine(Line line, double across) {
        double dx = line.end().x() - line.start().x();
        double share = (across - line.start().x()) / dx;
        if (dx == 0 || share < -1e-12 || share > 1 + 1e-12) {
            return null;
        }
        double dy = line.end().y() - line.start().y();
        double length = line.length();
        // Counter-clockwise, the outside lies to the right of the way.
        return new SurfaceLine(across, line.start().y() + share * dy, dy / length, -dx / length);
    }

    private static @Nullable SurfaceLine onArc(Arc arc, double across, boolean outer) {
        double off = across - arc.centre().x();
        double squared = arc.radius() * arc.radius() - off * off;
        if (squared < 0) {
            return null;
        }
        Bounds bounds = new Outline(List.of(arc)).bounds();
        if (across < bounds.minX() - 1e-12 || across > bounds.maxX() + 1e-12) {
            return null;
        }
        double rise = Math.sqrt(squared);
        for (double up : outer ? new double[] {rise, -rise} : new double[] {-rise, rise}) {
            Point point = arc.centre().plus(off, up);
            if (point.y() >= bounds.minY() - 1e-9 && point.y() <= bounds.maxY() + 1e-9) {
                double turn = arc.sweep() > 0 ? 1 : -1;
                return new SurfaceLine(across, point.y(), turn * off / arc.radius(), turn * up / arc.radius());
            }
        }
        return null;
    }
}
