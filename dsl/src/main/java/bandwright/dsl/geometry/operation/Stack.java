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
 * <p>Where a side of one polygon is not parallel to that of the next, the two triangles between them stand for a twisted face. They leave it by
 * a quarter of the distance between the two diagonals at most, and lie as mirror images in the four quarters, so a polygon that is its own
 * mirror image in both directions of the frame makes such a body.
 */
public final class Stack {
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
        double[] third = frame.third();
        MeshBuilder builder = new MeshBuilder(levels.size() * corners, 2 * levels.size() * corners);
        for (Level level : levels) {
            for (Point corner : level.corners()) {
                double[] at = new double[3];
                for (int k = 0; k < 3; k++) {
                    at[k] = frame.origin()[k]
                            + level.height() * frame.axis()[k]
                            + corner.x() * frame.side()[k]
                            + corner.y() * third[k];
                }
                builder.vertex(at[0], at[1], at[2]);
            }
        }
        for (int i = 0; i + 1 < levels.size(); i++) {
            int here = i * corners;
            int there = here + corners;
            for (int f = 0; f < corners; f++) {
                int g = (f + 1) % corners;
                if (rising(f, corners)) {
                    builder.triangle(here + f, here + g, there + g, surfaces[i]);
                    builder.triangle(here + f, there + g, there + f, surfaces[i]);
                } else {
                    builder.triangle(here + f, here + g, there + f, surfaces[i]);
                    builder.triangle(here + g, there + g, there + f, surfaces[i]);
                }
            }
        }
        Turning.close(builder, corners, (levels.size() - 1) * corners, surfaces[levels.size() - 1]);
        return builder.build();
    }

    /**
     * Which way the diagonal of a face runs: in turn, so that what one takes too much the next takes too little, and mirrored from quarter
     * to quarter.
     */
    private static boolean rising(int face, int corners) {
        int half = corners / 2;
        if (face >= half) {
            return face == corners - 1 || !rising(corners - 2 - face, corners);
        }
        return 2 * face <= half - 2 ? face % 2 == 0 : (half - 2 - face) % 2 != 0;
    }
}
