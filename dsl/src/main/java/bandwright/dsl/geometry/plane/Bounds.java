// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.plane;

/** The smallest upright rectangle round a figure, in mm. */
public record Bounds(double minX, double minY, double maxX, double maxY) {
    public static final Bounds NONE = new Bounds(
            Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY);

    public Bounds with(Point point) {
        return new Bounds(
                Math.min(minX, point.x()),
                Math.min(minY, point.y()),
                Math.max(maxX, point.x()),
                Math.max(maxY, point.y()));
    }

    /** Grown by an arc: its end and those of the circle's four outermost points that it passes. */
    Bounds with(Arc arc) {
        Bounds grown = with(arc.end());
        double from = arc.sweep() > 0 ? arc.startAngle() : arc.startAngle() + arc.sweep();
        double span = Math.abs(arc.sweep());
        for (int quarter = 0; quarter < 4; quarter++) {
            double angle = quarter * StrictMath.PI / 2;
            double turn = angle - from;
            turn -= 2 * StrictMath.PI * Math.floor(turn / (2 * StrictMath.PI));
            if (turn < span) {
                grown = grown.with(arc.centre()
                        .plus(
                                arc.radius() * Math.round(StrictMath.cos(angle)),
                                arc.radius() * Math.round(StrictMath.sin(angle))));
            }
        }
        return grown;
    }

    public Bounds with(Bounds other) {
        return new Bounds(
                Math.min(minX, other.minX),
                Math.min(minY, other.minY),
                Math.max(maxX, other.maxX),
                Math.max(maxY, other.maxY));
    }

    public double width() {
        return maxX - minX;
    }

    public double height() {
        return maxY - minY;
    }
}
