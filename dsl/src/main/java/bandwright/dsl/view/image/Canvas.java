// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.image;

import java.util.Arrays;
import java.util.List;

/**
 * Draws smooth-edged shapes into pixels. Coordinates are in pixels, y downwards, whole numbers between the pixels.
 *
 * <p>Filling works on {@value #LINES} scan lines a pixel; along a line the share of each pixel covered is exact.
 */
public final class Canvas {
    private static final int LINES = 8;

    private final Pixels pixels;

    public Canvas(Pixels pixels) {
        this.pixels = pixels;
    }

    /** Fills closed rings, each x, y, x, y …, by the even-odd rule: a ring inside another is a hole. */
    public void fill(List<double[]> rings, int colour) {
        double top = Double.POSITIVE_INFINITY;
        double bottom = Double.NEGATIVE_INFINITY;
        int corners = 0;
        for (double[] ring : rings) {
            corners += ring.length / 2;
            for (int i = 1; i < ring.length; i += 2) {
                top = Math.min(top, ring[i]);
                bottom = Math.max(bottom, ring[i]);
            }
        }
        int first = (int) Math.max(0, Math.floor(top));
        int last = (int) Math.min(pixels.height() - 1, Math.floor(bottom));
        double[] cover = new double[pixels.width()];
        double[] crossings = new double[corners];
        for (int y = first; y <= last; y++) {
            Arrays.fill(cover, 0);
            for (int line = 0; line < LINES; line++) {
                int count = crossings(rings, y + (line + 0.5) / LINES, crossings);
                Arrays.sort(crossings, 0, count);
                for (int i = 0; i + 1 < count; i += 2) {
                    addSpan(cover, crossings[i], crossings[i + 1]);
                }
            }
            for (int x = 0; x < cover.length; x++) {
                pixels.cover(x, y, colour, cover[x]);
            }
        }
    }

    private static int crossings(List<double[]> rings, double y, double[] crossings) {
        int count = 0;
        for (double[] ring : rings) {
            for (int i = 0; i < ring.length; i += 2) {
                int j = (i + 2) % ring.length;
                double from = ring[i + 1];
                double to = ring[j + 1];
                if (from <= y != to <= y) {
                    crossings[count++] = ring[i] + (y - from) / (to - from) * (ring[j] - ring[i]);
                }
            }
        }
        return count;
    }

    private static void addSpan(double[] cover, double from, double to) {
        int first = (int) Math.max(0, Math.floor(from));
        int last = (int) Math.min(cover.length - 1, Math.floor(to));
        for (int x = first; x <= last; x++) {
            double share = Math.min(to, x + 1) - Math.max(from, x);
            cover[x] = Math.min(1, cover[x] + Math.max(0, share) / LINES);
        }
    }

    /** Draws a line of the given width with round ends and joints through the points x, y, x, y …. */
    public void stroke(double[] points, double width, int colour) {
        double half = width / 2;
        double reach = half + 1;
        double left = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double top = Double.POSITIVE_INFINITY;
        double bottom = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < points.length; i += 2) {
            left = Math.min(left, points[i]);
            right = Math.max(right, points[i]);
            top = Math.min(top, points[i + 1]);
            bottom = Math.max(bottom, points[i + 1]);
        }
        int firstX = (int) Math.max(0, Math.floor(left - reach));
        int lastX = (int) Math.min(pixels.width() - 1, Math.floor(right + reach));
        int lastY = (int) Math.min(pixels.height() - 1, Math.floor(bottom + reach));
        for (int y = (int) Math.max(0, Math.floor(top - reach)); y <= lastY; y++) {
            for (int x = firstX; x <= lastX; x++) {
                double distance = distance(points, x + 0.5, y + 0.5);
                // Half a pixel of ramp on each side of the edge; lines thinner than a pixel get fainter, not narrower.
                double cover = Math.max(0, Math.min(1, Math.max(half, 0.5) + 0.5 - distance)) * Math.min(1, width);
                pixels.cover(x, y, colour, cover);
            }
        }
    }

    private static double distance(double[] points, double x, double y) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i + 3 < points.length; i += 2) {
            double dx = points[i + 2] - points[i];
            double dy = points[i + 3] - points[i + 1];
            double square = dx * dx + dy * dy;
            double along = square == 0 ? 0 : ((x - points[i]) * dx + (y - points[i + 1]) * dy) / square;
            along = Math.max(0, Math.min(1, along));
            double ax = points[i] + along * dx - x;
            double ay = points[i + 1] + along * dy - y;
            least = Math.min(least, ax * ax + ay * ay);
        }
        return Math.sqrt(least);
    }
}
