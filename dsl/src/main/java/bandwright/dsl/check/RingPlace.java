// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import bandwright.dsl.construct.StoneLayout;
import bandwright.dsl.geometry.operation.ThinnestWall;
import bandwright.dsl.quantity.QuantityFormat;

/**
 * A place on the ring.
 *
 * @param aroundDegrees from the top, counter-clockwise as seen from the fingertip, 0 to below 360
 * @param acrossMm along the finger, positive to the fingertip
 * @param outMm away from the finger's surface
 */
public record RingPlace(double aroundDegrees, double acrossMm, double outMm) {
    /** A point in space, x to the top and z along the finger, mm. */
    static RingPlace of(double x, double y, double z, double innerRadiusMm) {
        double degrees = StrictMath.atan2(y, x) * (180 / StrictMath.PI);
        return new RingPlace(turned(degrees), z, Math.sqrt(x * x + y * y) - innerRadiusMm);
    }

    static RingPlace of(StoneLayout.Place stone, double innerRadiusMm) {
        double[] centre = stone.centre();
        return of(centre[0], centre[1], centre[2], innerRadiusMm);
    }

    /** Half-way between two stones. */
    static RingPlace between(StoneLayout.Place a, StoneLayout.Place b, double innerRadiusMm) {
        double[] from = a.centre();
        double[] to = b.centre();
        return of((from[0] + to[0]) / 2, (from[1] + to[1]) / 2, (from[2] + to[2]) / 2, innerRadiusMm);
    }

    /** The middle of a wall. */
    static RingPlace of(ThinnestWall.Wall wall, double innerRadiusMm) {
        return of(
                (wall.fromX() + wall.toX()) / 2,
                (wall.fromY() + wall.toY()) / 2,
                (wall.fromZ() + wall.toZ()) / 2,
                innerRadiusMm);
    }

    private static double turned(double degrees) {
        double left = degrees < 0 ? degrees + 360 : degrees;
        return left >= 360 || left < 1e-9 ? 0 : left;
    }

    /** Such as {@code 4.5 deg, 0.2 mm across, 1.65 mm out}. */
    public String text() {
        return QuantityFormat.number(aroundDegrees, 1) + " deg, " + QuantityFormat.number(acrossMm, 2) + " mm across, "
                + QuantityFormat.number(outMm, 2) + " mm out";
    }
}
