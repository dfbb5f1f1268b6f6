// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.List;

import org.locationtech.jts.geom.Coordinate;

import bandwright.dsl.geometry.operation.Turning;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.solid.Mesh;

/**
 * One turned shape placed many times: the seat of every stone of a row, or its pins.
 *
 * @param line points along the axis (0 at the girdle line, outwards positive) and away from it, mm
 * @param surfaces a surface number for the part after each point but the last, then for the flat ends
 * @param facets sides that stand for the circle
 */
record Feature(List<Point> line, List<Integer> surfaces, int facets, List<Axis> axes) {
    Feature {
        line = List.copyOf(line);
        surfaces = List.copyOf(surfaces);
        axes = List.copyOf(axes);
    }

    /**
     * Where a shape stands.
     *
     * @param angle round the ring, radians
     * @param radius of the girdle's centre from the finger's axis
     * @param out part of the axis away from the finger
     * @param alongFinger part of the axis along the finger
     * @param around part of the axis round the ring
     */
    record Axis(double angle, double radius, double across, double out, double alongFinger, double around) {}

    /** The largest distance from the axis, mm. */
    double reach() {
        return line.stream().mapToDouble(Point::y).max().orElse(0);
    }

    /** Half the angle that a shape can take round the ring, with a margin. */
    double halfAngle() {
        double lowest = axes.stream()
                .mapToDouble(axis -> axis.radius + Math.min(0, line.get(0).x()))
                .min()
                .orElse(1);
        return StrictMath.atan2(1.1 * reach(), Math.max(lowest, reach()));
    }

    /** The same shape at other places. */
    Feature at(List<Axis> places) {
        return new Feature(line, surfaces, facets, places);
    }

    Mesh mesh(Axis axis) {
        int[] numbers = surfaces.stream().mapToInt(Integer::intValue).toArray();
        return Turning.turn(line, numbers, facets, stand(axis).frame());
    }

    static Stand stand(Axis axis) {
        return new Stand(axis, StrictMath.cos(axis.angle), StrictMath.sin(axis.angle));
    }

    /** An axis in space. */
    record Stand(Axis axis, double cos, double sin) {
        /** The point of the axis at a height above the girdle line. */
        Coordinate along(double height) {
            return new Coordinate(
                    axis.radius * cos + height * directionX(),
                    axis.radius * sin + height * directionY(),
                    axis.across + height * axis.alongFinger);
        }

        private double directionX() {
            return axis.out * cos - axis.around * sin;
        }

        private double directionY() {
            return axis.out * sin + axis.around * cos;
        }

        Turning.Frame frame() {
            double[] origin = {axis.radius * cos, axis.radius * sin, axis.across};
            double[] direction = {directionX(), directionY(), axis.alongFinger};
            double[] side = {-axis.alongFinger * cos, -axis.alongFinger * sin, axis.out};
            if (axis.around != 0) {
                double size = Math.sqrt(1 - axis.around * axis.around);
                for (int k = 0; k < 3; k++) {
                    side[k] /= size;
                }
            }
            return new Turning.Frame(origin, direction, side);
        }
    }
}
