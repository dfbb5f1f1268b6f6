// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.List;
import java.util.Optional;

import bandwright.dsl.construct.StoneLayout;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.geometry.plane.RegionBoolean;

/**
 * The plane of a stone's axis and the finger's, as the stone sees it: x across from its girdle's middle, y along its axis from the girdle line, outwards
 * positive, mm.
 */
record SeatSection(StoneLayout.Line line) {
    private static final double CHORD_MM = 1e-4;

    /** A figure of this plane among the sections of parts. */
    Region figure(List<Point> corners) {
        return Region.of(Outline.polygon(corners.stream()
                .map(point -> new Point(
                        line.across() + point.x() * line.axisOut() + point.y() * line.axisAcross(),
                        line.girdleRadius() + point.y() * line.axisOut() - point.x() * line.axisAcross()))
                .toList()));
    }

    private Point seen(Point point) {
        double x = point.x() - line.across();
        double y = point.y() - line.girdleRadius();
        return new Point(x * line.axisOut() - y * line.axisAcross(), x * line.axisAcross() + y * line.axisOut());
    }

    /** How far what a figure and metal have in common goes, seen in this plane; nothing where they are clear of each other. */
    Optional<Bounds> common(List<Point> corners, Region metal) {
        Region common = RegionBoolean.intersection(metal, figure(corners));
        return common.isEmpty()
                ? Optional.empty()
                : Optional.of(common.pieces().stream()
                        .flatMap(piece -> piece.outer().flattened(CHORD_MM).stream())
                        .map(this::seen)
                        .reduce(Bounds.NONE, Bounds::with, Bounds::with));
    }
}
