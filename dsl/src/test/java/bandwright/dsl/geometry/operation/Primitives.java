// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.operation;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshBuilder;

/** Simple closed bodies for tests, lengths in mm. */
final class Primitives {
    static final double[] X = {1, 0, 0};
    static final double[] Y = {0, 1, 0};
    static final double[] Z = {0, 0, 1};

    private Primitives() {}

    static Mesh box(double x0, double y0, double z0, double x1, double y1, double z1) {
        MeshBuilder builder = new MeshBuilder(8, 12);
        for (int i = 0; i < 8; i++) {
            builder.vertex((i & 1) == 0 ? x0 : x1, (i & 2) == 0 ? y0 : y1, (i & 4) == 0 ? z0 : z1);
        }
        int[][] quads = {{0, 2, 3, 1}, {4, 5, 7, 6}, {0, 1, 5, 4}, {2, 6, 7, 3}, {0, 4, 6, 2}, {1, 3, 7, 5}};
        for (int q = 0; q < 6; q++) {
            builder.triangle(quads[q][0], quads[q][1], quads[q][2], q);
            builder.triangle(quads[q][0], quads[q][2], quads[q][3], q);
        }
        return builder.build();
    }

    /** A body turned about an axis through a point; the line counts its places along the axis from there. */
    static Mesh turned(double[] origin, double[] axis, List<Point> line, int facets) {
        int[] surfaces = new int[line.size()];
        return Turning.turn(line, surfaces, facets, new Turning.Frame(origin, axis, square(axis)));
    }

    static Mesh cone(double[] origin, double[] axis, double low, double high, double length, int facets) {
        return turned(origin, axis, List.of(new Point(0, low), new Point(length, high)), facets);
    }

    static Mesh cylinder(double[] origin, double[] axis, double radius, double length, int facets) {
        return cone(origin, axis, radius, radius, length, facets);
    }

    /** A ball of frusta inscribed along the meridian, with a small flat at each pole. */
    static Mesh ball(double[] centre, double radius, int facets) {
        List<Point> line = new ArrayList<>();
        int steps = facets / 2;
        for (int i = 0; i < steps; i++) {
            double angle = StrictMath.PI * (i + 0.5) / steps;
            line.add(new Point(-radius * StrictMath.cos(angle), radius * StrictMath.sin(angle)));
        }
        return turned(centre, Z, line, facets);
    }

    /** A unit vector square to another: the coordinate axis least along it, made square. */
    private static double[] square(double[] axis) {
        int least = 0;
        for (int i = 1; i < 3; i++) {
            least = Math.abs(axis[i]) < Math.abs(axis[least]) ? i : least;
        }
        double[] side = new double[3];
        for (int i = 0; i < 3; i++) {
            side[i] = (i == least ? 1 : 0) - axis[least] * axis[i];
        }
        double size = Math.sqrt(side[0] * side[0] + side[1] * side[1] + side[2] * side[2]);
        return new double[] {side[0] / size, side[1] / size, side[2] / size};
    }
}
