// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;

import bandwright.dsl.geometry.operation.Stack;
import bandwright.dsl.geometry.operation.Turning;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.solid.Mesh;

/** One shape placed many times: the seat of every stone of a row, or its pins. */
record Feature(Form form, List<Axis> axes) {
    Feature {
        axes = List.copyOf(axes);
    }

    /** A shape along an axis of its own; heights count from the girdle line, outwards positive, mm. */
    sealed interface Form {
        /** Where its pieces (hole, cone, bore) end, rising. */
        List<Double> heights();

        /** For each piece a distance from the axis that no part of the shape it stands for exceeds, mm. */
        List<Double> radii();

        Mesh mesh(Turning.Frame frame);
    }

    /**
     * A turned shape.
     *
     * @param line points along the axis and away from it
     * @param surfaces a surface number for the part after each point but the last, then for the flat ends
     * @param facets sides that stand for the circle
     */
    record Turned(List<Point> line, List<Integer> surfaces, int facets) implements Form {
        Turned {
            line = List.copyOf(line);
            surfaces = List.copyOf(surfaces);
        }

        @Override
        public List<Double> heights() {
            return line.stream().map(Point::x).toList();
        }

        @Override
        public List<Double> radii() {
            return larger(line.stream().map(Point::y).toList());
        }

        @Override
        public Mesh mesh(Turning.Frame frame) {
            return Turning.turn(line, numbers(surfaces), facets, frame);
        }
    }

    /**
     * A shape that is not round.
     *
     * @param levels polygons at rising heights, x across the row, y along it
     * @param surfaces a surface number for the part after each level but the last, then for the flat ends
     */
    record Stacked(List<Stack.Level> levels, List<Integer> surfaces) implements Form {
        Stacked {
            levels = List.copyOf(levels);
            surfaces = List.copyOf(surfaces);
        }

        @Override
        public List<Double> heights() {
            return levels.stream().map(Stack.Level::height).toList();
        }

        @Override
        public List<Double> radii() {
            return larger(levels.stream().map(Stack.Level::reach).toList());
        }

        @Override
        public Mesh mesh(Turning.Frame frame) {
            return Stack.stack(levels, numbers(surfaces), frame);
        }
    }

    private static List<Double> larger(List<Double> reaches) {
        List<Double> radii = new ArrayList<>();
        for (int i = 0; i + 1 < reaches.size(); i++) {
            radii.add(Math.max(reaches.get(i), reaches.get(i + 1)));
        }
        return radii;
    }

    private static int[] numbers(List<Integer> surfaces) {
        return surfaces.stream().mapToInt(Integer::intValue).toArray();
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
        return form.radii().stream().mapToDouble(Double::doubleValue).max().orElse(0);
    }

    /** Half the angle that a shape can take round the ring, with a margin. */
    double halfAngle() {
        double lowest = axes.stream()
                .mapToDouble(axis -> axis.radius + Math.min(0, form.heights().get(0)))
                .min()
                .orElse(1);
        return StrictMath.atan2(1.1 * reach(), Math.max(lowest, reach()));
    }

    /** The same shape at other places. */
    Feature at(List<Axis> places) {
        return new Feature(form, places);
    }

    Mesh mesh(Axis axis) {
        return form.mesh(stand(axis).frame());
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
