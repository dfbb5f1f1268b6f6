// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshBuilder;
import bandwright.dsl.material.BrilliantProportions;

/**
 * The facets of a round brilliant: table, 8 stars, 8 kites and 16 upper halves above the girdle, 8 mains and 16 lower halves
 * below, pointed culet. Each facet is a surface of its own.
 *
 * <p>Azimuths go in steps of 22.5 degrees: kites and mains lie at multiples of 45 degrees, the halves meet the
 * girdle between them. The girdle is a cylinder of {@value #AROUND} sides; the halves cut it in scallops, as on a real stone,
 * so the girdle is thinner between the points where its thickness counts.
 */
final class BrilliantBuilder {
    private static final int AROUND = 32;
    private static final int STEPS_PER_MAIN = AROUND / 8;

    /** How far the stars reach from the table's edge to the girdle, seen from above; the middle of the usual 45 to 65 %. */
    private static final double STAR_SHARE = 0.5;

    /** How far the lower halves reach from the girdle to the culet, seen from below; usual is 70 to 85 %. */
    private static final double LOWER_HALF_SHARE = 0.77;

    private final MeshBuilder mesh = new MeshBuilder(96, 192);
    private final double radius;
    private final double girdle;
    private final double crownSlope;
    private final double pavilionSlope;
    private final double tableRadius;
    private int facet;

    BrilliantBuilder(double diameterMm, BrilliantProportions proportions) {
        radius = diameterMm / 2;
        girdle = diameterMm * proportions.girdlePercent() / 100;
        crownSlope = StrictMath.tan(Math.toRadians(proportions.crownAngleDegrees()));
        pavilionSlope = StrictMath.tan(Math.toRadians(proportions.pavilionAngleDegrees()));
        tableRadius = radius * proportions.tablePercent() / 100;
    }

    Mesh build() {
        double halfMain = StrictMath.cos(StrictMath.PI / 8);
        double tableEdge = tableRadius * halfMain;
        double starRadius = tableEdge + STAR_SHARE * (radius - tableEdge);
        int[] table = ring(tableRadius, girdle + (radius - tableRadius) * crownSlope, 0);
        int[] stars = ring(starRadius, girdle + (radius - starRadius * halfMain) * crownSlope, 0.5);
        double lowerRadius = (1 - LOWER_HALF_SHARE) * radius;
        int[] lowers = ring(lowerRadius, -(radius - lowerRadius * halfMain) * pavilionSlope, 0.5);
        int culet = mesh.vertex(0, 0, -radius * pavilionSlope);
        int[] upperEdge = scallops(starRadius, true);
        int[] lowerEdge = scallops(lowerRadius, false);

        fan(table);
        for (int i = 0; i < 8; i++) {
            int next = (i + 1) % 8;
            int before = (i + 7) % 8;
            int main = i * STEPS_PER_MAIN;
            fan(table[i], stars[i], table[next]);
            fan(table[i], stars[before], upperEdge[main], stars[i]);
            halves(stars[i], upperEdge, main, true);
            fan(culet, lowers[i], lowerEdge[main], lowers[before]);
            halves(lowers[i], lowerEdge, main, false);
        }
        for (int j = 0; j < AROUND; j++) {
            int next = (j + 1) % AROUND;
            fan(lowerEdge[j], lowerEdge[next], upperEdge[next], upperEdge[j]);
        }
        return mesh.build();
    }

    /** The two half facets between one main facet and the next, which share the corner at their tip. */
    private void halves(int tip, int[] edge, int main, boolean upper) {
        int half = STEPS_PER_MAIN / 2;
        for (int side = 0; side < 2; side++) {
            int[] corners = new int[half + 2];
            corners[0] = tip;
            for (int k = 0; k <= half; k++) {
                int step = side * half + (upper ? k : half - k);
                corners[k + 1] = edge[(main + step) % AROUND];
            }
            fan(corners);
        }
    }

    /** Eight vertices at one height, the first at {@code shift} eighths of a turn. */
    private int[] ring(double ringRadius, double height, double shift) {
        int[] ring = new int[8];
        for (int i = 0; i < 8; i++) {
            double angle = (i + shift) * StrictMath.PI / 4;
            ring[i] = mesh.vertex(ringRadius * StrictMath.cos(angle), ringRadius * StrictMath.sin(angle), height);
        }
        return ring;
    }

    /**
     * The edge in which the half facets cut the girdle's cylinder. Each facet's plane goes through its tip and two points of
     * the cylinder at the girdle's full height: at its main facet and where it meets its twin.
     */
    private int[] scallops(double tipRadius, boolean upper) {
        double inward = radius - tipRadius * StrictMath.cos(StrictMath.PI / 8);
        double level = upper ? girdle : 0;
        double rise = upper ? inward * crownSlope : -inward * pavilionSlope;
        int half = STEPS_PER_MAIN / 2;
        double step = 2 * StrictMath.PI / AROUND;
        double middle = half * step / 2;
        // In the direction of the chord's middle, the plane falls from the tip to the chord and on to the cylinder.
        double chord = radius * StrictMath.cos(middle);
        double slope = rise / (chord - tipRadius * StrictMath.cos(middle));
        int[] edge = new int[AROUND];
        for (int j = 0; j < AROUND; j++) {
            double off = (j % half) * step - middle;
            double height = level - slope * (radius * StrictMath.cos(off) - chord);
            edge[j] = mesh.vertex(radius * StrictMath.cos(j * step), radius * StrictMath.sin(j * step), height);
        }
        return edge;
    }

    private void fan(int... corners) {
        for (int i = 1; i + 1 < corners.length; i++) {
            mesh.triangle(corners[0], corners[i], corners[i + 1], facet);
        }
        facet++;
    }
}
