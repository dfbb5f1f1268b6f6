// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.geometry.operation.Loft;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Curve;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.OutlineMatch;
import bandwright.dsl.geometry.plane.OutlineValidity;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.model.Band;
import bandwright.dsl.model.Fault;

/**
 * The cross-section of a band that changes on its way round. At a station it is the station's profile; between two neighbours at
 * angles a and b each point moves straight from its place in the one to its place in the other ({@link OutlineMatch} says which points
 * answer to each other), by the share ½ (1 − cos π(θ − a)/(b − a)). The change begins and ends at rest, so surfaces have no kink at a
 * station (C¹, periodic); sizes never leave the range between neighbouring stations, and no point goes deeper into the finger than in them.
 */
final class Stations {
    private static final double TURN = 2 * StrictMath.PI;

    private final Band band;
    private final List<List<Point>> polygons = new ArrayList<>();
    private final List<Integer> curveOf = new ArrayList<>();
    private final double[] radians;

    private Stations(Band band) {
        this.band = band;
        List<List<Curve>> matched = OutlineMatch.match(
                band.stations().stream().map(s -> s.section().outline()).toList());
        radians = band.stations().stream()
                .mapToDouble(s -> s.degrees() * (StrictMath.PI / 180))
                .toArray();
        List<Integer> chords = new ArrayList<>();
        for (int i = 0; i < matched.get(0).size(); i++) {
            int most = 1;
            for (List<Curve> own : matched) {
                most = Math.max(most, own.get(i).chords(BodyMaker.CHORD_RISE_MM));
            }
            chords.add(most);
            for (int c = 0; c < most; c++) {
                curveOf.add(i);
            }
        }
        for (List<Curve> own : matched) {
            List<Point> points = new ArrayList<>();
            for (int i = 0; i < own.size(); i++) {
                List<Point> divided = new ArrayList<>();
                own.get(i).divide(chords.get(i), divided::add);
                points.add(own.get(i).start());
                points.addAll(divided.subList(0, divided.size() - 1));
            }
            polygons.add(points);
        }
    }

    static Stations of(Band band) {
        Stations stations = new Stations(band);
        for (int k = 0; k < stations.radians.length; k++) {
            stations.refuseCrossing(k);
        }
        return stations;
    }

    /** Profiles that have nothing in common may cross themselves half-way. */
    private void refuseCrossing(int k) {
        int next = (k + 1) % radians.length;
        for (int i = 1; i < 4; i++) {
            if (OutlineValidity.crossing(Outline.polygon(mixed(k, next, i / 4.0)))
                    .isPresent()) {
                throw new Fault(Diagnostic.error("stations-cross", band.place())
                        .with(
                                band.stations().get(k).section().name(),
                                band.stations().get(next).section().name())
                        .build());
            }
        }
    }

    /** The cross-section at an angle, its y from the finger. */
    Outline outline(double angle) {
        return Outline.polygon(points(angle));
    }

    private List<Point> points(double angle) {
        int n = radians.length;
        for (int k = 0; k < n; k++) {
            double span = wrapped(radians[(k + 1) % n] - radians[k]);
            double way = wrapped(angle - radians[k]);
            if (way <= span || n == 1) {
                double share = (1 - StrictMath.cos(StrictMath.PI * way / span)) / 2;
                return mixed(k, (k + 1) % n, share);
            }
        }
        // Rounding may leave an angle a hair beyond every span.
        return polygons.get(0);
    }

    private static double wrapped(double angle) {
        return angle - TURN * Math.floor(angle / TURN);
    }

    private List<Point> mixed(int one, int other, double share) {
        List<Point> from = polygons.get(one);
        List<Point> to = polygons.get(other);
        List<Point> points = new ArrayList<>(from.size());
        for (int i = 0; i < from.size(); i++) {
            Point a = from.get(i);
            Point b = to.get(i);
            points.add(new Point(a.x() + share * (b.x() - a.x()), a.y() + share * (b.y() - a.y())));
        }
        return points;
    }

    /** The box that holds all cross-sections, y from the finger: points move straight, so the stations' own boxes hold it. */
    Bounds bounds() {
        return band.stations().stream().map(s -> s.section().outline().bounds()).reduce(Bounds.NONE, Bounds::with);
    }

    /**
     * The whole band. What it holds beyond its facets: arcs of the stations become chords, which keep their area but not quite its moment;
     * the rest is known at the stations and, like the section itself, passes over half of each span from one to the other.
     */
    Solid solid(Surfaces surfaces) {
        double inner = band.finger().innerRadiusMm();
        List<Loft.Section> sections = new ArrayList<>();
        for (int i = 0; i < BodyMaker.FACETS; i++) {
            double angle = (i + 0.5) * TURN / BodyMaker.FACETS;
            sections.add(new Loft.Section(
                    angle, points(angle).stream().map(p -> p.plus(0, inner)).toList()));
        }
        int n = radians.length;
        double rest = 0;
        for (int k = 0; k < n; k++) {
            double around = wrapped(radians[(k + 1) % n] - radians[k]) + wrapped(radians[k] - radians[(k + n - 1) % n]);
            double exact = band.stations()
                    .get(k)
                    .section()
                    .outline()
                    .counterClockwise()
                    .translated(0, inner)
                    .moments()
                    .aboutX();
            double chords = Outline.polygon(polygons.get(k))
                    .translated(0, inner)
                    .moments()
                    .aboutX();
            rest += around / 2 * (exact - chords);
        }
        List<Integer> faces = curveOf.stream()
                .map(curve -> surfaces.number(band.name(), "face " + (curve + 1)))
                .toList();
        return new Solid.Lofted(new Loft(sections, true, faces), rest);
    }
}
