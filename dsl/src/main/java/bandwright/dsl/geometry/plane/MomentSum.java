// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.plane;

/**
 * Sums boundary integrals of an outline run through counter-clockwise. By Green's theorem the area is ½∮(x dy − y dx), the
 * first moment about the x axis ∬ y dA = −½∮ y² dx, and about the y axis ∬ x dA = ½∮ x² dy.
 */
public final class MomentSum {
    private double doubleArea;
    private double momentX;
    private double momentY;

    void line(Point from, Point to) {
        double dx = to.x() - from.x();
        double dy = to.y() - from.y();
        doubleArea += from.x() * to.y() - to.x() * from.y();
        momentX -= dx * (from.y() * from.y() + from.y() * to.y() + to.y() * to.y()) / 6;
        momentY += dy * (from.x() * from.x() + from.x() * to.x() + to.x() * to.x()) / 6;
    }

    /** With x = cx + R cos t and y = cy + R sin t every integrand is a trigonometric polynomial in t, integrated in closed form. */
    void arc(Arc arc) {
        double r = arc.radius();
        double cx = arc.centre().x();
        double cy = arc.centre().y();
        double from = arc.startAngle();
        double to = from + arc.sweep();
        double dSin = StrictMath.sin(to) - StrictMath.sin(from);
        double dCos = StrictMath.cos(to) - StrictMath.cos(from);
        double dSin2 = StrictMath.sin(2 * to) - StrictMath.sin(2 * from);
        double dSin3 = cube(StrictMath.sin(to)) - cube(StrictMath.sin(from));
        double dCos3 = cube(StrictMath.cos(to)) - cube(StrictMath.cos(from));
        double sineSquared = arc.sweep() / 2 - dSin2 / 4;
        double cosineSquared = arc.sweep() / 2 + dSin2 / 4;
        double sineCubed = -dCos + dCos3 / 3;
        double cosineCubed = dSin - dSin3 / 3;
        doubleArea += r * (cx * dSin - cy * dCos + r * arc.sweep());
        momentX += r * (cy * cy * -dCos + 2 * cy * r * sineSquared + r * r * sineCubed) / 2;
        momentY += r * (cx * cx * dSin + 2 * cx * r * cosineSquared + r * r * cosineCubed) / 2;
    }

    Moments moments() {
        return new Moments(doubleArea / 2, momentX, momentY);
    }

    private static double cube(double value) {
        return value * value * value;
    }
}
