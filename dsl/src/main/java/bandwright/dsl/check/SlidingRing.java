// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.List;
import java.util.NavigableSet;

import bandwright.dsl.construct.PartSection;
import bandwright.dsl.geometry.plane.Bounds;

/**
 * A kept ring on its way along the finger. Each of its places across passes all that stands from there on, its own floor too: its inner height must be no
 * less than the largest outer height of what stands (inside: its outer height no more than the smallest inner one).
 *
 * @param passing height of the ring where it is tightest, mm from the finger's axis
 * @param shoulder height of what stands there
 * @param margin room, mm; negative where it cannot pass
 * @param free whether nothing stands beyond the ring
 */
record SlidingRing(double passing, double shoulder, double margin, boolean free) {
    /**
     * @param asked room over what stands beyond the ring, mm; over its own floor none is needed
     */
    static SlidingRing of(
            PartSection ring, List<PartSection> standing, boolean fingertip, boolean inside, double asked) {
        Heights own = new Heights(List.of(ring));
        Heights other = new Heights(standing);
        Bounds bounds = ring.region().bounds();
        NavigableSet<Double> places = own.places();
        places.addAll(other.places());
        double upward = inside ? -1 : 1;
        // Both as heights that must not grow on the way; of the shoulders the one beyond the ring has its room with it.
        double shoulder = Double.NEGATIVE_INFINITY;
        double room = 0;
        boolean free = true;
        SlidingRing tightest = new SlidingRing(0, 0, Double.POSITIVE_INFINITY, true);
        for (double across : fingertip ? places.descendingSet() : places) {
            boolean beyond = fingertip ? across > bounds.maxX() : across < bounds.minX();
            var stands = other.whole(across);
            if (stands.isPresent()) {
                double height =
                        upward * (inside ? stands.get().from() : stands.get().to());
                double needed = beyond ? asked : 0;
                free &= !beyond;
                if (height + needed > shoulder + room) {
                    shoulder = height;
                    room = needed;
                }
            }
            var ringHere = own.whole(across);
            if (ringHere.isPresent() && shoulder > Double.NEGATIVE_INFINITY) {
                double height =
                        upward * (inside ? ringHere.get().to() : ringHere.get().from());
                double margin = height - shoulder - room;
                if (margin < tightest.margin - 1e-6) {
                    tightest = new SlidingRing(upward * height, upward * shoulder, margin, free);
                }
            }
        }
        return new SlidingRing(tightest.passing, tightest.shoulder, tightest.margin, free);
    }
}
