// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.plane;

import java.util.function.Consumer;

/** A piece of an outline, run through from its start to its end. */
public sealed interface Curve permits Line, Arc {
    Point start();

    Point end();

    Curve reversed();

    Curve translated(double dx, double dy);

    /** The part of this curve between two points on it, in its own direction. */
    Curve between(Point from, Point to);

    /** Length in mm. */
    double length();

    /** The point half-way along. */
    Point middle();

    /** Distance in mm of a point from the whole line or circle that this curve is a piece of. */
    double carrierDistance(Point point);

    /** Adds this curve's share to the boundary integrals. */
    void integrate(MomentSum sum);

    /**
     * Hands over the points of a polyline that stands for this curve, the start left out, the end included. Chords leave
     * the curve by at most {@code toleranceMm}.
     */
    default void flatten(double toleranceMm, Consumer<Point> points) {
        divide(chords(toleranceMm), points);
    }

    /** How many chords stand for this curve if they may leave it by {@code toleranceMm}. */
    int chords(double toleranceMm);

    /** The points of a polyline of so many chords that stands for this curve, the start left out, the end included. */
    void divide(int chords, Consumer<Point> points);

    /** Which way it goes at its start, radians from the first axis to the second. */
    double startHeading();

    /** Which way it goes at its end, radians. */
    double endHeading();

    /** The point at a share of the way, 0 at the start and 1 at the end. */
    Point at(double share);
}
