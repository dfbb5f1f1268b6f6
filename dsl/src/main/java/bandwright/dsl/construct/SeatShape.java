// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.material.BrilliantProportions;
import bandwright.dsl.material.StoneCut;
import bandwright.dsl.model.Fault;
import bandwright.dsl.model.Seats;

/** The tool that cuts a seat: hole, cone, bore, from the finger outwards along the stone's axis. */
final class SeatShape {
    /** How far the tool reaches beyond the metal on both sides, mm. */
    private static final double BEYOND_MM = 1;

    /** Sides of the circle; at 48 the corners leave a 1.5 mm circle by under 2 micrometres. */
    private static final int FACETS = 48;

    private SeatShape() {}

    static Feature of(Seats seats, StoneLayout layout, double innermost, double outermost, Surfaces surfaces) {
        if (layout.row().cut() != StoneCut.ROUND) {
            throw notYet(seats, "a seat for a stone that is not round");
        }
        if (seats.channel().isPresent()) {
            throw notYet(seats, "a channel");
        }
        double stone = layout.row().aroundMm() / 2;
        double hole = seats.holeMm() / 2;
        double bearing = seats.bearingMm().orElse(pavilionDepth(2 * (stone - hole)));
        List<Feature.Axis> axes = new ArrayList<>();
        double deepest = 0;
        double highest = 0;
        double level = layout.places().stream()
                        .mapToDouble(place -> place.line().girdleRadius())
                        .min()
                        .orElse(innermost)
                - innermost;
        for (StoneLayout.Place place : layout.places()) {
            StoneLayout.Line line = place.line();
            axes.add(new Feature.Axis(
                    place.angle(),
                    line.girdleRadius(),
                    line.across(),
                    line.axisOut(),
                    line.axisAcross(),
                    place.axisAround()));
            double upright = Math.max(0.2, line.axisOut());
            deepest = Math.max(deepest, (line.girdleRadius() - innermost) / upright + stone * stone / innermost);
            highest = Math.max(highest, (outermost - line.girdleRadius()) / upright + stone);
            if (seats.deburrMm() > 0 && Math.abs(line.girdleRadius() - innermost - level) > 1e-9) {
                throw notYet(seats, "a bevel at the finger for lines at different heights");
            }
        }
        if ((seats.bearingMm().isPresent() || seats.deburrMm() > 0) && bearing + seats.deburrMm() >= level) {
            throw new Fault(Diagnostic.error("seat-too-deep", seats.place())
                    .with(seats.name(), Lengths.text(bearing + seats.deburrMm()), Lengths.text(level))
                    .build());
        }
        List<Point> points = new ArrayList<>();
        List<Integer> faces = new ArrayList<>();
        double bottom = -Math.max(deepest, bearing) - BEYOND_MM;
        int holeFace = surfaces.number(seats.name(), "hole");
        if (seats.deburrMm() > 0) {
            points.add(new Point(bottom, hole + seats.deburrMm() - level - bottom));
            faces.add(surfaces.number(seats.name(), "bevel"));
            bottom = -level + seats.deburrMm();
        }
        points.add(new Point(bottom, hole));
        faces.add(holeFace);
        points.add(new Point(-bearing, hole));
        faces.add(surfaces.number(seats.name(), "bearing"));
        points.add(new Point(0, stone));
        int bore = surfaces.number(seats.name(), "bore");
        if (seats.clearanceMm() > 0) {
            faces.add(surfaces.number(seats.name(), "ledge"));
            points.add(new Point(0, stone + seats.clearanceMm()));
        }
        faces.add(bore);
        points.add(new Point(highest + BEYOND_MM, stone + seats.clearanceMm()));
        faces.add(bore);
        return new Feature(points, faces, FACETS, axes);
    }

    /** Height in mm of the cone under a girdle of a given width, at the pavilion angle of the published reference stone. */
    static double pavilionDepth(double widthMm) {
        double angle = BrilliantProportions.REFERENCE.pavilionAngleDegrees() * (StrictMath.PI / 180);
        return widthMm / 2 * StrictMath.tan(angle);
    }

    private static Fault notYet(Seats seats, String what) {
        return new Fault(Diagnostic.error("not-yet", seats.place()).with(what).build());
    }
}
