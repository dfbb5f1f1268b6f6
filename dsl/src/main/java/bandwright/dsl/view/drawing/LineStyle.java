// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.drawing;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.plane.Region;

/**
 * How a line of a chart looks: dash and marker tell lines apart without their colour.
 *
 * @param corners of the marker; negative for one that stands on its tip where it could stand on its side
 * @param dash lengths of line and gap, mm
 */
record LineStyle(int colour, boolean filled, int corners, List<Double> dash) {
    static final List<LineStyle> ALL = List.of(
            new LineStyle(0x1b4f72, true, 16, List.of()),
            new LineStyle(0xa04000, false, 4, List.of(2.4, 1.2)),
            new LineStyle(0x1e6b3a, true, 3, List.of(0.7, 0.9)),
            new LineStyle(0x6c3483, false, -4, List.of(3.2, 1.0, 0.6, 1.0)),
            new LineStyle(0x424949, true, 5, List.of(5.0, 1.6)),
            new LineStyle(0x7d6608, false, 16, List.of(1.2, 1.8)));

    private static final double RADIUS = 1;

    Mark line(List<Point> points) {
        return new Mark.Stroke(points, colour, 0.4, new Mark.Dash(dash));
    }

    Mark marker(Point at) {
        int count = Math.abs(corners);
        double turn = corners == 4 ? 0.25 * StrictMath.PI : 0.5 * StrictMath.PI;
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double angle = turn + 2 * StrictMath.PI * i / count;
            points.add(at.plus(RADIUS * StrictMath.cos(angle), RADIUS * StrictMath.sin(angle)));
        }
        return new Mark.Shape(Region.of(Outline.polygon(points)), filled ? colour : 0xffffff, colour, 0.3);
    }
}
