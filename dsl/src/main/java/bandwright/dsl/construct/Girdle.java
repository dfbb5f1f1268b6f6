// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.material.StoneCut;
import bandwright.dsl.model.StoneRow;

/**
 * The outline of a stone's girdle in its own plane: x across the row, y along it, mm, from its centre.
 *
 * @param across half the size across
 * @param around half the size along the row
 */
public record Girdle(StoneCut cut, double across, double around) {
    /** Narrowing that finds the foot of a perpendicular to 10⁻¹². */
    private static final int NARROWINGS = 64;

    public static Girdle of(StoneRow row) {
        return new Girdle(row.cut(), row.widthMm() / 2, row.aroundMm() / 2);
    }

    boolean isRectangular() {
        return SeatShape.isRectangular(cut);
    }

    /** The largest distance of the outline from its centre, mm. */
    double reach() {
        return isRectangular() ? Math.sqrt(across * across + around * around) : Math.max(across, around);
    }

    /** One of so many points of the outline, corners among them if four divides their number. */
    Point point(int number, int of) {
        if (!isRectangular()) {
            double turn = 2 * StrictMath.PI * number / of;
            return new Point(across * StrictMath.cos(turn), around * StrictMath.sin(turn));
        }
        double way = 4.0 * number / of;
        double share = 2 * (way - Math.floor(way)) - 1;
        return switch ((int) way) {
            case 0 -> new Point(across, share * around);
            case 1 -> new Point(-share * across, around);
            case 2 -> new Point(-across, -share * around);
            default -> new Point(share * across, -around);
        };
    }

    /** Distance from the outline of a point in its plane, negative within: of a rectangle exact, of an ellipse to rounding. */
    public double distance(double x, double y) {
        double left = Math.abs(x);
        double up = Math.abs(y);
        if (isRectangular()) {
            double besideX = left - across;
            double besideY = up - around;
            return besideX <= 0 || besideY <= 0
                    ? Math.max(besideX, besideY)
                    : Math.sqrt(besideX * besideX + besideY * besideY);
        }
        if (across == around) {
            return Math.sqrt(x * x + y * y) - across;
        }
        // From a point of a quarter the way to that quarter of the ellipse shrinks to one place and then grows.
        double low = 0;
        double high = StrictMath.PI / 2;
        for (int i = 0; i < NARROWINGS; i++) {
            double turn = (low + high) / 2;
            double cos = StrictMath.cos(turn);
            double sin = StrictMath.sin(turn);
            boolean nearer = (left - across * cos) * across * sin < (up - around * sin) * around * cos;
            low = nearer ? turn : low;
            high = nearer ? high : turn;
        }
        double beyondX = left - across * StrictMath.cos(low);
        double beyondY = up - around * StrictMath.sin(low);
        double distance = Math.sqrt(beyondX * beyondX + beyondY * beyondY);
        double within = left * left / (across * across) + up * up / (around * around);
        return within < 1 ? -distance : distance;
    }
}
