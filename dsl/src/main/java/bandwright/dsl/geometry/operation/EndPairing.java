// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.operation;

import java.util.Arrays;

/**
 * Points on a line at which something begins or ends, paired up in order: the first beginning with the first end. Their
 * numbers are equal by construction; where rounding has put an end before its beginning, the pair is kept all the same,
 * for only the numbers make the result close.
 */
final class EndPairing {
    interface Pairs {
        void accept(int start, int end);
    }

    private int startCount;
    private int endCount;
    private int[] starts = new int[8];
    private int[] ends = new int[8];
    private double[] startAt = new double[8];
    private double[] endAt = new double[8];

    void clear() {
        startCount = 0;
        endCount = 0;
    }

    void offer(int vertex, boolean begins, double at) {
        if (begins) {
            if (startCount == starts.length) {
                starts = Arrays.copyOf(starts, 2 * startCount);
                startAt = Arrays.copyOf(startAt, 2 * startCount);
            }
            insert(starts, startAt, startCount++, vertex, at);
        } else {
            if (endCount == ends.length) {
                ends = Arrays.copyOf(ends, 2 * endCount);
                endAt = Arrays.copyOf(endAt, 2 * endCount);
            }
            insert(ends, endAt, endCount++, vertex, at);
        }
    }

    /** Insertion keeps the order of equal places, and lists are short. */
    private static void insert(int[] vertices, double[] places, int count, int vertex, double place) {
        int i = count;
        while (i > 0 && places[i - 1] > place) {
            vertices[i] = vertices[i - 1];
            places[i] = places[i - 1];
            i--;
        }
        vertices[i] = vertex;
        places[i] = place;
    }

    void pair(Pairs pairs) {
        if (startCount != endCount) {
            throw new IllegalStateException("Beginnings and ends differ in number: " + startCount + ", " + endCount);
        }
        for (int i = 0; i < startCount; i++) {
            pairs.accept(starts[i], ends[i]);
        }
    }
}
