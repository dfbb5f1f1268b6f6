// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.material.StoneCut;
import bandwright.dsl.model.Fault;
import bandwright.dsl.model.Prongs;

/** A pin as cast: a straight shank with a half-sphere on top. */
final class PinShape {
    private static final int FACETS = 24;

    /** Steps from the dome's foot to the small flat that stands for its pole. */
    private static final int DOME_STEPS = 5;

    private static final int HALVINGS = 60;

    private PinShape() {}

    /** Offset of a gap's two pins from the row's line, mm; 0 for a single one. */
    static double across(Prongs prongs, StoneLayout layout, int gap) {
        if (prongs.perGap() == 1) {
            return 0;
        }
        if (prongs.acrossMm().isPresent()) {
            return prongs.acrossMm().getAsDouble();
        }
        double reach = prongs.reachMm().orElse(0);
        double beside = prongs.diameterMm() / 2 - reach;
        double along = layout.halfWay(gap);
        return across(Girdle.of(layout.row()), along, beside)
                .orElseThrow(() -> new Fault(Diagnostic.error("pins-out-of-reach", prongs.place())
                        .with(prongs.name(), Lengths.text(reach))
                        .build()));
    }

    /**
     * How far across a point must lie that stands half-way between two stones and so far from the girdle's outline: of a round stone in closed form, of
     * a rectangle at its corner, where covering both edges needs it, of an oval by halving to rounding.
     *
     * @param along from the stone's centre, mm
     */
    static OptionalDouble across(Girdle girdle, double along, double beside) {
        if (girdle.cut() == StoneCut.ROUND) {
            double distance = girdle.around() + beside;
            return distance <= along
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(Math.sqrt(distance * distance - along * along));
        }
        double gap = Math.max(0, along - girdle.around());
        if (girdle.distance(0, along) >= beside || (girdle.isRectangular() && beside <= 0)) {
            return OptionalDouble.empty();
        }
        if (girdle.isRectangular()) {
            return OptionalDouble.of(girdle.across() + Math.sqrt(beside * beside - gap * gap));
        }
        double low = 0;
        double high = girdle.across() + Math.abs(beside);
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (girdle.distance(middle, along) < beside) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return OptionalDouble.of(high);
    }

    static Feature of(Prongs prongs, StoneLayout layout, double rootMm, Surfaces surfaces) {
        double radius = prongs.diameterMm() / 2;
        List<Point> points = new ArrayList<>();
        List<Integer> faces = new ArrayList<>();
        int shank = surfaces.number(prongs.name(), "shank of a pin");
        int dome = surfaces.number(prongs.name(), "dome of a pin");
        points.add(new Point(-rootMm, radius));
        faces.add(shank);
        points.addAll(dome(radius, prongs.riseMm()));
        for (int i = 0; i < DOME_STEPS; i++) {
            faces.add(dome);
        }
        faces.add(dome);
        List<Feature.Axis> axes = new ArrayList<>();
        for (int i = 0; i < layout.gaps().size(); i++) {
            StoneLayout.Place gap = layout.gaps().get(i);
            double across = across(prongs, layout, layout.even() ? 0 : i);
            StoneLayout.Line line = gap.line();
            for (double off : prongs.perGap() == 1 ? new double[] {0} : new double[] {-across, across}) {
                axes.add(new Feature.Axis(
                        gap.angle(),
                        line.girdleRadius() - off * line.axisAcross(),
                        line.across() + off * line.axisOut(),
                        line.axisOut(),
                        line.axisAcross(),
                        gap.axisAround()));
            }
        }
        return new Feature(new Feature.Turned(points, faces, FACETS), axes);
    }

    /**
     * The half-sphere as cone frusta and a small flat on top. Its height is stretched by the few parts in a hundred that make
     * the frusta hold ⅔πr³ exactly.
     */
    private static List<Point> dome(double radius, double foot) {
        double volume = 0;
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= DOME_STEPS; i++) {
            double angle = StrictMath.PI / 2 * i / (DOME_STEPS + 0.5);
            points.add(new Point(radius * StrictMath.sin(angle), radius * StrictMath.cos(angle)));
        }
        for (int i = 0; i < DOME_STEPS; i++) {
            Point a = points.get(i);
            Point b = points.get(i + 1);
            volume += (b.x() - a.x()) * (a.y() * a.y() + a.y() * b.y() + b.y() * b.y()) / 3;
        }
        double stretch = 2.0 / 3 * radius * radius * radius / volume;
        return points.stream()
                .map(point -> new Point(foot + stretch * point.x(), point.y()))
                .toList();
    }
}
