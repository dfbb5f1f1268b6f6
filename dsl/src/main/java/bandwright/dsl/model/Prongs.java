// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.model;

import java.util.OptionalDouble;

import bandwright.dsl.source.Place;

/**
 * Pins half-way between the stones of a row.
 *
 * @param part the part they are added to
 * @param riseMm height of the tip as cast above the girdle, dome included in addition: the dome's foot stands there
 * @param rootMm how far below the girdle they begin; absent: at the seat's cone
 * @param acrossMm offset of the two pins of a gap from the row's line; absent if {@code reach} is given
 * @param reachMm how far a pin covers the edge of its stones
 * @param perGap one or two
 * @param setHeightMm the finished tip above the girdle, if said
 */
public record Prongs(
        String name,
        Place place,
        String row,
        String part,
        double diameterMm,
        double riseMm,
        OptionalDouble rootMm,
        OptionalDouble acrossMm,
        OptionalDouble reachMm,
        int perGap,
        OptionalDouble setHeightMm) {}
