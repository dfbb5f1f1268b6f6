// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.material;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.jspecify.annotations.Nullable;

/**
 * A metal or alloy a part can be made of.
 *
 * @param name the language's word, {@code white-gold-585-pd}
 * @param otherNames further words for it, often with the recipe in them: {@code white-gold-585-pd160}
 * @param title what it is, with the recipe as its source gives it
 * @param family the main metal: gold, silver, platinum, palladium, titanium, steel, tantalum, cobalt; of a user's what its recipe is sold as or
 *     holds most of, or own
 * @param colour red, rose, yellow, green, white, cream or grey; own for a user's
 * @param fineness parts of the precious metal in a thousand by mass; null where that has no meaning or is not stated
 * @param composition mass shares (0 to 1), largest first; empty if the recipe is not stated
 * @param densityGPerCm3 density in g/cm3 at room temperature
 * @param densityOrigin how that density is known
 * @param solidusC where melting begins, degrees C, or null
 * @param liquidusC where melting ends, degrees C, or null
 * @param meltingFromMemory whether solidus and liquidus are from memory, not from the sources
 * @param nickel whether it holds nickel
 * @param picture its colour in pictures
 * @param sources where recipe and density were read
 * @param note warnings and rival values, or empty text
 */
public record Metal(
        String name,
        List<String> otherNames,
        String title,
        String family,
        String colour,
        @Nullable Integer fineness,
        Map<Element, Double> composition,
        double densityGPerCm3,
        DensityOrigin densityOrigin,
        @Nullable Double solidusC,
        @Nullable Double liquidusC,
        boolean meltingFromMemory,
        Nickel nickel,
        LinearColour picture,
        List<MaterialSource> sources,
        String note) {
    private static final Set<String> PRECIOUS = Set.of("gold", "silver", "platinum", "palladium");

    public Metal {
        otherNames = List.copyOf(otherNames);
        composition = Collections.unmodifiableMap(new LinkedHashMap<>(composition));
        sources = List.copyOf(sources);
    }

    /** Whether it is sold as gold, silver, platinum or palladium. */
    public boolean isPrecious() {
        return PRECIOUS.contains(family);
    }

    /** Whether there is any of these in it, too little perhaps to be sold as one. */
    public boolean holdsPrecious() {
        return isPrecious() || composition.keySet().stream().map(Element::name).anyMatch(PRECIOUS::contains);
    }

    @Override
    public String toString() {
        return name;
    }
}
