// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.plane.Region;

/** Parallel lines that fill a region, each cut where the region ends: by counting, every second gap between crossings is inside. */
final class Hatching {
    private Hatching() {}

    /**
     * @param angle of the lines, radians
     * @param spacingMm between two lines; they lie on one grid for the whole plane
     * @param toleranceMm how far chords may leave the region's arcs
     */
    static List<List<Point>> lines(Region region, double angle, double spacingMm, double toleranceMm) {
        double cosine = StrictMath.cos(angle);
        double sine = StrictMath.sin(angle);
        List<double[]> rings = new ArrayList<>();
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Region.Piece piece : region.pieces()) {
            List<Outline> outlines = new ArrayList<>(piece.holes());
            outlines.add(piece.outer());
            for (Outline outline : outlines) {
                List<Point> corners = outline.flattened(toleranceMm);
                double[] ring = new double[2 * corners.size()];
                for (int i = 0; i < corners.size(); i++) {
                    Point corner = corners.get(i);
                    ring[2 * i] = corner.x() * cosine + corner.y() * sine;
                    ring[2 * i + 1] = corner.y() * cosine - corner.x() * sine;
                    low = Math.min(low, ring[2 * i + 1]);
                    high = Math.max(high, ring[2 * i + 1]);
                }
                rings.add(ring);
            }
        }
        List<List<Point>> lines = new ArrayList<>();
        for (long row = (long) Math.ceil(low / spacingMm); row * spacingMm < high; row++) {
            double level = row * spacingMm;
            double[] crossings = crossings(rings, level);
            for (int i = 0; i + 1 < crossings.length; i += 2) {
                if (crossings[i + 1] - crossings[i] > spacingMm / 10) {
                    lines.add(List.of(
                            new Point(crossings[i] * cosine - level * sine, crossings[i] * sine + level * cosine),
                            new Point(
                                    crossings[i + 1] * cosine - level * sine,
                                    crossings[i + 1] * sine + level * cosine)));
                }
            }
        }
        return lines;
    }

    private static double[] crossings(List<double[]> rings, double level) {
        double[] crossings =
                new double[rings.stream().mapToInt(ring -> ring.length).sum()];
        int count = 0;
        for (double[] ring : rings) {
            for (int i = 0; i < ring.length; i += 2) {
                int j = (i + 2) % ring.length;
                if (ring[i + 1] <= level != ring[j + 1] <= level) {
                    double share = (level - ring[i + 1]) / (ring[j + 1] - ring[i + 1]);
                    crossings[count++] = ring[i] + share * (ring[j] - ring[i]);
                }
            }
        }
        double[] sorted = Arrays.copyOf(crossings, count);
        Arrays.sort(sorted);
        return sorted;
    }
}
