// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.operation;

import java.util.List;

import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshBuilder;

/**
 * Bodies that go from one polygon to the next along an axis of their own, corner to corner, closed by a flat end on each side: what {@link
 * Turning} is for circles, for any outline.
 *
 * <p>Where a side of one polygon is not parallel to that of the next, the face between them is twisted: the lines between points in the same share of
 * both sides. Four triangles round its middle stand for it, under which lies exactly what lies under the twisted face. So the body holds ⅙ h (A + 4 M
 * + B) between two polygons, with M the area half-way.
 */
public final class Stack {
    /** Sides whose cross product is smaller are parallel, mm². */
    private static final double FLAT_MM2 = 1e-12;

    /**
     * A polygon at a height along the axis.
     *
     * @param corners counter-clockwise, x along the frame's side; the first lies just after y = 0, and corner i from the end is the mirror
     *     image of corner i
     */
    public record Level(double height, List<Point> corners) {
        public Level {
            corners = List.copyOf(corners);
        }

        /** The largest distance of a corner from the axis. */
        public double reach() {
            return corners.stream()
                    .mapToDouble(corner -> Math.sqrt(corner.x() * corner.x() + corner.y() * corner.y()))
                    .max()
                    .orElse(0);
        }
    }

    private Stack() {}

    /**
     * @param levels by height, not falling, all with as many corners, a number that four divides; the first and the last without three corners
     *     in a line, for strips close them
     * @param surfaces the surface number of what lies between each level and the next, then of the flat ends
     */
    public static Mesh stack(List<Level> levels, int[] surfaces, Turning.Frame frame) {
        int corners = levels.get(0).corners().size();
        MeshBuilder builder = new MeshBuilder(levels.size() * corners, 2 * levels.size() * corners);
        for (Level level : levels) {
            for (Point corner : level.corners()) {
                vertex(builder, frame, level.height(), corner.x(), corner.y());
            }
        }
        for (int i = 0; i + 1 < levels.size(); i++) {
            int here = i * corners;
            int there = here + corners;
            for (int f = 0; f < corners; f++) {
                int g = (f + 1) % corners;
                if (isTwisted(levels.get(i), levels.get(i + 1), f, g)) {
                    int middle = middle(builder, frame, levels.get(i), levels.get(i + 1), f, g);
                    builder.triangle(here + f, here + g, middle, surfaces[i]);
                    builder.triangle(here + g, there + g, middle, surfaces[i]);
                    builder.triangle(there + g, there + f, middle, surfaces[i]);
                    builder.triangle(there + f, here + f, middle, surfaces[i]);
                } else {
                    builder.triangle(here + f, here + g, there + g, surfaces[i]);
                    builder.triangle(here + f, there + g, there + f, surfaces[i]);
                }
            }
        }
        Turning.close(builder, corners, (levels.size() - 1) * corners, surfaces[levels.size() - 1]);
        return builder.build();
    }

    /** Whether two opposite sides, seen along the axis, do not run alike. */
    private static boolean isTwisted(Level low, Level high, int f, int g) {
        Point a = low.corners().get(f);
        Point b = low.corners().get(g);
        Point c = high.corners().get(f);
        Point d = high.corners().get(g);
        double cross = (b.x() - a.x()) * (d.y() - c.y()) - (b.y() - a.y()) * (d.x() - c.x());
        return high.height() > low.height() && Math.abs(cross) > FLAT_MM2;
    }

    private static int middle(MeshBuilder builder, Turning.Frame frame, Level low, Level high, int f, int g) {
        double x = 0;
        double y = 0;
        for (Level level : List.of(low, high)) {
            x += (level.corners().get(f).x() + level.corners().get(g).x()) / 4;
            y += (level.corners().get(f).y() + level.corners().get(g).y()) / 4;
        }
        return vertex(builder, frame, (low.height() + high.height()) / 2, x, y);
    }

    private static int vertex(MeshBuilder builder, Turning.Frame frame, double height, double x, double y) {
        double[] third = frame.third();
        double[] at = new double[3];
        for (int k = 0; k < 3; k++) {
            at[k] = frame.origin()[k] + height * frame.axis()[k] + x * frame.side()[k] + y * third[k];
        }
        return builder.vertex(at[0], at[1], at[2]);
    }
}
