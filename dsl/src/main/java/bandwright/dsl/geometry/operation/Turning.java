// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.operation;

import java.util.List;

import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshBuilder;

/**
 * Turned bodies, as from a lathe: a line of points (along the axis, away from it) swept round an axis of its own, closed by a
 * flat disc at each end. Neither disc has a vertex on the axis, and facets lie crosswise to the two planes of the frame, so
 * a plane of symmetry through the axis meets no vertex.
 */
public final class Turning {
    /**
     * Where a turned body stands.
     *
     * @param origin a point of the axis from which places along it are counted
     * @param axis unit vector
     * @param side unit vector square to the axis
     */
    @SuppressWarnings("ArrayRecordComponent")
    public record Frame(double[] origin, double[] axis, double[] side) {
        /** Square to both, so that side, third and axis are right-handed. */
        public double[] third() {
            return new double[] {
                axis[1] * side[2] - axis[2] * side[1],
                axis[2] * side[0] - axis[0] * side[2],
                axis[0] * side[1] - axis[1] * side[0]
            };
        }
    }

    private Turning() {}

    /**
     * @param line points (along, away), rising along the axis, away positive
     * @param surfaces the surface number of the part between each point and the next, then of the discs
     * @param facets how many sides stand for the circle, an even number; their corners are moved outwards by √(δ / sin δ) so that the
     *     body holds what the round one would
     */
    public static Mesh turn(List<Point> line, int[] surfaces, int facets, Frame frame) {
        double step = 2 * StrictMath.PI / facets;
        double scale = Math.sqrt(step / StrictMath.sin(step));
        double[] third = frame.third();
        MeshBuilder builder = new MeshBuilder(line.size() * facets, 2 * line.size() * facets);
        for (Point point : line) {
            for (int f = 0; f < facets; f++) {
                double angle = (f + 0.5) * step;
                double u = scale * point.y() * StrictMath.cos(angle);
                double v = scale * point.y() * StrictMath.sin(angle);
                builder.vertex(
                        frame.origin[0] + point.x() * frame.axis[0] + u * frame.side[0] + v * third[0],
                        frame.origin[1] + point.x() * frame.axis[1] + u * frame.side[1] + v * third[1],
                        frame.origin[2] + point.x() * frame.axis[2] + u * frame.side[2] + v * third[2]);
            }
        }
        for (int i = 0; i + 1 < line.size(); i++) {
            int here = i * facets;
            int there = here + facets;
            for (int f = 0; f < facets; f++) {
                int g = (f + 1) % facets;
                builder.triangle(here + f, here + g, there + g, surfaces[i]);
                builder.triangle(here + f, there + g, there + f, surfaces[i]);
            }
        }
        close(builder, facets, (line.size() - 1) * facets, surfaces[line.size() - 1]);
        return builder.build();
    }

    /**
     * Closes both ends. Strips across a disc, from one side to the other, have no corner on its middle.
     *
     * @param last the first vertex of the far end; the near end begins at 0
     */
    static void close(MeshBuilder builder, int facets, int last, int disc) {
        for (int f = 0; f < facets / 2 - 1; f++) {
            int a = f;
            int b = f + 1;
            int c = facets - 2 - f;
            int d = facets - 1 - f;
            builder.triangle(d, c, b, disc);
            builder.triangle(d, b, a, disc);
            builder.triangle(last + a, last + b, last + d, disc);
            builder.triangle(last + b, last + c, last + d, disc);
        }
    }
}
