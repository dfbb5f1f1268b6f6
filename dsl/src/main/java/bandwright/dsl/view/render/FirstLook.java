// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

import java.util.BitSet;

import bandwright.dsl.view.image.Srgb;

/** What one ray a pixel saw, and where that is not enough. */
final class FirstLook {
    private final int width;
    private final int height;
    private final int[] bodies;
    private final boolean[] stones;
    private final boolean[] open;
    private final float[] normals;
    private final int[] colours;

    FirstLook(int width, int height) {
        this.width = width;
        this.height = height;
        bodies = new int[width * height];
        stones = new boolean[width * height];
        open = new boolean[width * height];
        normals = new float[3 * width * height];
        colours = new int[width * height];
    }

    void put(int x, int y, Sampler seen) {
        int at = y * width + x;
        bodies[at] = seen.body;
        stones[at] = seen.stone;
        open[at] = seen.open;
        for (int k = 0; k < 3; k++) {
            normals[3 * at + k] = (float) seen.normal(k);
        }
        colours[at] = Srgb.code(seen.red, seen.green, seen.blue);
    }

    int colour(int x, int y) {
        return colours[y * width + x];
    }

    /** The pixels of some rows where one look is not enough. */
    BitSet rough(int firstRow, int endRow, double limit) {
        BitSet rough = new BitSet(width * endRow);
        for (int y = firstRow; y < endRow; y++) {
            for (int x = 0; x < width; x++) {
                rough.set(y * width + x, isRough(x, y, limit));
            }
        }
        return rough;
    }

    /** Whether the pixel shows a stone, or differs from one of its eight neighbours. */
    private boolean isRough(int x, int y, double limit) {
        int at = y * width + x;
        if (stones[at]) {
            return true;
        }
        for (int ny = Math.max(0, y - 1); ny <= Math.min(height - 1, y + 1); ny++) {
            for (int nx = Math.max(0, x - 1); nx <= Math.min(width - 1, x + 1); nx++) {
                if (differ(at, ny * width + nx, limit)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether a body is seen in the pixel or next to it, and mirrors nothing but the room wherever it is. */
    boolean isOpen(int x, int y, int body) {
        boolean found = false;
        for (int ny = Math.max(0, y - 1); ny <= Math.min(height - 1, y + 1); ny++) {
            for (int nx = Math.max(0, x - 1); nx <= Math.min(width - 1, x + 1); nx++) {
                int at = ny * width + nx;
                if (bodies[at] == body) {
                    if (!open[at]) {
                        return false;
                    }
                    found = true;
                }
            }
        }
        return found;
    }

    /** Whether the pixels with even numbers round a pixel all show a body and all mirror nothing but the room. */
    boolean isOpenBetween(int x, int y, int body) {
        for (int ny = y & ~1; ny <= y + 1; ny += 2) {
            for (int nx = x & ~1; nx <= x + 1; nx += 2) {
                int at = Math.min(ny, (height - 1) & ~1) * width + Math.min(nx, (width - 1) & ~1);
                if (bodies[at] != body || !open[at]) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean differ(int one, int other, double limit) {
        if (bodies[one] != bodies[other]) {
            return true;
        }
        if (bodies[one] == Sampler.GROUND) {
            return false;
        }
        double cosine = normals[3 * one] * normals[3 * other]
                + normals[3 * one + 1] * normals[3 * other + 1]
                + normals[3 * one + 2] * normals[3 * other + 2];
        double red = ((colours[one] >> 16 & 255) - (colours[other] >> 16 & 255)) / 255.0;
        double green = ((colours[one] >> 8 & 255) - (colours[other] >> 8 & 255)) / 255.0;
        double blue = ((colours[one] & 255) - (colours[other] & 255)) / 255.0;
        return cosine < 0.9 || red * red + green * green + blue * blue > limit;
    }
}
