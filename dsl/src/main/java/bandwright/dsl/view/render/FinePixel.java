// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

import bandwright.dsl.view.image.Srgb;

/**
 * Looks at a pixel at four points, and if they do not agree, at more, until the mean is steady or there are sixteen. What a
 * triangle of metal or the ground shows at one point stands for all points of the pixel on it: it is the edges between them
 * that are uneven. A stone is looked into at each point.
 */
final class FinePixel {
    private static final Points POINTS = Points.SIXTEEN;

    private static final int FIRST = 4;

    /** Between the lightest and the darkest of the first points, all channels of 0 to 1 together. */
    private static final double AGREED = 0.16;

    /** By which share the mean may have changed from four points to eight to stay with it. */
    private static final double STEADY = 0.03;

    /** Each turn's place in the pixel. */
    private static final double[] RIGHT = new double[POINTS.count()];

    private static final double[] DOWN = new double[RIGHT.length];

    static {
        for (int line = 0; line < RIGHT.length; line++) {
            int turn = POINTS.turn()[line];
            RIGHT[turn] = POINTS.right()[line];
            DOWN[turn] = POINTS.down(line);
        }
    }

    private final Sampler sampler;
    private final Visible.Seen seen;
    private final Sampler.Open open;
    private final int[] triangles = new int[RIGHT.length];
    private final boolean[] stones = new boolean[RIGHT.length];
    private final double[] red = new double[RIGHT.length];
    private final double[] green = new double[RIGHT.length];
    private final double[] blue = new double[RIGHT.length];

    FinePixel(Sampler sampler, Visible.Seen seen, Sampler.Open open) {
        this.sampler = sampler;
        this.seen = seen;
        this.open = open;
    }

    /** The pixel's colour as 0xRRGGBB. */
    int colour(int x, int y) {
        double redSum = 0;
        double greenSum = 0;
        double blueSum = 0;
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        double before = 0;
        int count = 0;
        while (count < RIGHT.length) {
            look(x, y, count);
            redSum += red[count];
            greenSum += green[count];
            blueSum += blue[count];
            double light = red[count] + green[count] + blue[count];
            least = Math.min(least, light);
            most = Math.max(most, light);
            count++;
            double mean = (redSum + greenSum + blueSum) / count;
            if (count == FIRST) {
                before = mean;
                if (most - least <= AGREED) {
                    break;
                }
            } else if (count == 2 * FIRST && Math.abs(mean - before) < STEADY * mean) {
                break;
            }
        }
        return Srgb.code(redSum / count, greenSum / count, blueSum / count);
    }

    private void look(int x, int y, int turn) {
        int triangle = seen.at(x, y, turn);
        triangles[turn] = triangle;
        for (int earlier = 0; earlier < turn; earlier++) {
            if (triangles[earlier] == triangle && !stones[earlier]) {
                take(turn, red[earlier], green[earlier], blue[earlier], false);
                return;
            }
        }
        sampler.look(x + RIGHT[turn], y + DOWN[turn], triangle, open);
        take(turn, sampler.red, sampler.green, sampler.blue, sampler.stone);
    }

    private void take(int turn, double redSeen, double greenSeen, double blueSeen, boolean stone) {
        red[turn] = redSeen;
        green[turn] = greenSeen;
        blue[turn] = blueSeen;
        stones[turn] = stone;
    }
}
