// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.Arrays;

import org.jspecify.annotations.Nullable;

/** The two stones of many pairs that are nearest each other. */
final class StonePairs {
    private double least = Double.POSITIVE_INFINITY;
    private @Nullable StoneBody one;
    private @Nullable StoneBody other;

    void add(StoneBody a, StoneBody b) {
        if (StoneBody.apartAtLeast(a, b) >= least) {
            return;
        }
        double distance = StoneBody.distance(a, b, least);
        if (distance < least) {
            least = distance;
            one = a;
            other = b;
        }
    }

    boolean isEmpty() {
        return one == null;
    }

    /** Their distance, mm; 0 if they meet. */
    double least() {
        return least;
    }

    /** Whether they stand in one and the same place. */
    boolean coincide() {
        return one != null
                && other != null
                && Arrays.equals(one.place().centre(), other.place().centre());
    }

    @Nullable
    RingPlace place(double innerRadiusMm) {
        return one == null || other == null ? null : RingPlace.between(one.place(), other.place(), innerRadiusMm);
    }
}
