// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.model;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import bandwright.dsl.source.Place;

/**
 * The places cut for the stones of a row.
 *
 * @param from names of the parts that are cut
 * @param holeMm diameter of the through hole
 * @param bearingMm height of the cone under the girdle; absent: the cone has the stone's pavilion angle
 * @param clearanceMm how much wider than the girdle the bore above it is, all round
 * @param deburrMm size of the bevel at the hole's edge on the finger; 0 for none
 */
public record Seats(
        String name,
        Place place,
        String row,
        List<String> from,
        double holeMm,
        OptionalDouble bearingMm,
        double clearanceMm,
        double deburrMm,
        boolean atBench,
        Optional<Channel> channel) {
    public Seats {
        from = List.copyOf(from);
    }

    /** One slot along the row instead; {@code barsEvery} 0 means no bars are left. */
    public record Channel(double widthMm, double notchMm, double lipMm, double floorMm, int barsEvery) {}
}
