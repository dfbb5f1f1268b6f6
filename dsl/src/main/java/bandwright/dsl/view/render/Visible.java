// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

import java.util.Arrays;
import java.util.BitSet;

/**
 * Which triangle is seen at each place of a picture, found by laying all triangles on the picture and keeping the nearest: for
 * what the camera sees, that is far cheaper than casting rays. Bodies are closed with their faces outwards, so a face that
 * is seen from behind is hidden by another.
 */
final class Visible {
    /** How far outside of its edges a triangle still shows, pixels: no place between two of them stays empty. */
    private static final double SEAM = 1e-9;

    private final int width;

    /** Of each triangle's three corners: right and down in pixels, and the nearness. */
    private final float[] corners;

    /** First and last row of pixels that each triangle touches, 16 bits each; the first after the last: none. */
    private final int[] rows;

    Visible(Viewpoint viewpoint, TriangleSoup soup, int width, int height) {
        this.width = width;
        corners = new float[9 * soup.count()];
        rows = new int[soup.count()];
        Parts.each(rows.length, (from, to) -> {
            for (int t = from; t < to; t++) {
                for (int at = 9 * t; at < 9 * t + 9; at += 3) {
                    viewpoint.project(soup.corners, at, corners);
                }
                rows[t] = rows(9 * t, height);
            }
        });
    }

    private int rows(int at, int height) {
        double top = least(corners[at + 1], corners[at + 4], corners[at + 7]);
        double bottom = most(corners[at + 1], corners[at + 4], corners[at + 7]);
        double bx = (double) corners[at + 3] - corners[at];
        double by = (double) corners[at + 4] - corners[at + 1];
        double cx = (double) corners[at + 6] - corners[at];
        double cy = (double) corners[at + 7] - corners[at + 1];
        // Seen from outside, corners go round counter-clockwise; rows grow downwards.
        boolean turnedAway = by * cx - bx * cy <= 0;
        int first = (int) Math.max(0, Math.min(height, top));
        int last = (int) Math.max(-1, Math.min(height - 1, bottom));
        return turnedAway || first > last ? Short.MAX_VALUE << 16 : first << 16 | last;
    }

    /** The triangles seen in some rows of pixels. */
    interface Seen {
        /** The number of a triangle, or {@link Ray#NOTHING}. */
        int at(int x, int y, int turn);
    }

    /**
     * Looks at points of some pixels.
     *
     * @param asked the pixels to be looked at, in rows from the top left
     */
    Seen look(int firstRow, int endRow, Points points, BitSet asked) {
        int[] rooms = new int[width * (endRow - firstRow)];
        int count = 0;
        for (int pixel = 0; pixel < rooms.length; pixel++) {
            rooms[pixel] = asked.get(firstRow * width + pixel) ? count++ : Laying.NONE;
        }
        int each = points.count();
        Laying laying = new Laying(firstRow, endRow, points, rooms, count * each);
        for (int t = 0; t < rows.length; t++) {
            if (rows[t] >> 16 < endRow && (rows[t] & 0xffff) >= firstRow) {
                laying.lay(t);
            }
        }
        return (x, y, turn) -> laying.seen[rooms[(y - firstRow) * width + x] * each + turn];
    }

    /** Lays triangles on some rows of pixels; lines are counted from the top of the picture, several a row. */
    private final class Laying {
        static final int NONE = -1;

        private final int firstRow;
        private final int endRow;
        private final Points points;

        /** Of each pixel, which of those that are asked for it is, or {@link #NONE}. */
        private final int[] rooms;

        /** As many of each pixel that is asked for as there are points. */
        private final int[] seen;

        private final float[] nearest;

        /** Of a triangle's three edges: right a line down, the place at its first corner's height, and down or up the picture. */
        private final double[] slopes = new double[3];

        private final double[] starts = new double[3];
        private final double[] sides = new double[3];

        Laying(int firstRow, int endRow, Points points, int[] rooms, int size) {
            this.firstRow = firstRow;
            this.endRow = endRow;
            this.points = points;
            this.rooms = rooms;
            seen = new int[size];
            nearest = new float[size];
            Arrays.fill(seen, Ray.NOTHING);
            Arrays.fill(nearest, Float.NEGATIVE_INFINITY);
        }

        void lay(int triangle) {
            int a = 9 * triangle;
            int count = points.count();
            double top = least(corners[a + 1], corners[a + 4], corners[a + 7]);
            double bottom = most(corners[a + 1], corners[a + 4], corners[a + 7]);
            int first = (int) Math.max(firstRow * count, Math.ceil(top * count - 0.5));
            int last = (int) Math.min(endRow * count - 1, Math.floor(bottom * count - 0.5));
            if (first > last || !isAsked(a, first / count - firstRow, last / count - firstRow)) {
                return;
            }
            double ax = corners[a];
            double ay = corners[a + 1];
            double bx = corners[a + 3] - ax;
            double by = corners[a + 4] - ay;
            double cx = corners[a + 6] - ax;
            double cy = corners[a + 7] - ay;
            double share = 1 / (by * cx - bx * cy);
            double nearB = (corners[a + 5] - corners[a + 2]) * share;
            double nearC = (corners[a + 8] - corners[a + 2]) * share;
            double nearRight = by * nearC - cy * nearB;
            double nearDown = cx * nearB - bx * nearC;
            edge(0, 0, 0, bx, by);
            edge(1, bx, by, cx, cy);
            edge(2, cx, cy, 0, 0);
            for (int line = first; line <= last; line++) {
                int y = line / count;
                int inRow = line - y * count;
                double py = (line + 0.5) / count - ay;
                double off = points.right()[inRow] - ax;
                double left = left(py) - SEAM - off;
                double right = right(py) + SEAM - off;
                int begin = left <= 0 ? 0 : (int) Math.ceil(left);
                int end = right >= width - 1 ? width - 1 : right < 0 ? -1 : (int) right;
                int turn = points.turn()[inRow];
                int row = (y - firstRow) * width;
                for (int x = begin; x <= end; x++) {
                    int room = rooms[row + x];
                    if (room == NONE) {
                        continue;
                    }
                    int at = room * count + turn;
                    float nearness = (float) (corners[a + 2] + (x + off) * nearRight + py * nearDown);
                    if (nearness > nearest[at]) {
                        nearest[at] = nearness;
                        seen[at] = triangle;
                    }
                }
            }
        }

        /** Whether one is asked for of the pixels round a triangle. */
        private boolean isAsked(int a, int from, int to) {
            int left = (int) Math.max(0, least(corners[a], corners[a + 3], corners[a + 6]));
            int right = (int) Math.min(width - 1, most(corners[a], corners[a + 3], corners[a + 6]));
            for (int row = from; row <= to; row++) {
                for (int at = row * width + left; at <= row * width + right; at++) {
                    if (rooms[at] != NONE) {
                        return true;
                    }
                }
            }
            return false;
        }

        /** Takes up an edge; what is inside lies to its right if it goes down the picture, and to its left if it goes up. */
        private void edge(int number, double fromX, double fromY, double toX, double toY) {
            double down = toY - fromY;
            double slope = down == 0 ? 0 : (toX - fromX) / down;
            slopes[number] = slope;
            starts[number] = fromX - fromY * slope;
            sides[number] = down;
        }

        /** Where on a line the triangle begins; far left if it does not. */
        private double left(double down) {
            double left = Double.NEGATIVE_INFINITY;
            for (int edge = 0; edge < 3; edge++) {
                double at = starts[edge] + down * slopes[edge];
                left = sides[edge] > 0 && at > left ? at : left;
            }
            return left;
        }

        private double right(double down) {
            double right = Double.POSITIVE_INFINITY;
            for (int edge = 0; edge < 3; edge++) {
                double at = starts[edge] + down * slopes[edge];
                right = sides[edge] < 0 && at < right ? at : right;
            }
            return right;
        }
    }

    private static float least(float a, float b, float c) {
        return Math.min(a, Math.min(b, c));
    }

    private static float most(float a, float b, float c) {
        return Math.max(a, Math.max(b, c));
    }
}
