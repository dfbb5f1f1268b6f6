// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.material;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

import org.jspecify.annotations.Nullable;

/**
 * What a stone is made of.
 *
 * @param name the language's word, {@code cubic-zirconia}
 * @param otherNames further words for it
 * @param title the name its source gives
 * @param densityGPerCm3 density in g/cm3, which is the trade's specific gravity
 * @param refractiveIndex the lower refractive index, or null if none is on file
 * @param refractiveIndexHigh the higher one of a doubly refracting stone, or null
 * @param body the colour of its body in pictures, light that passes: our own approximation
 * @param sources where density and index were read
 * @param note warnings and rival values, or empty text
 */
public record StoneMaterial(
        String name,
        List<String> otherNames,
        String title,
        double densityGPerCm3,
        @Nullable Double refractiveIndex,
        @Nullable Double refractiveIndexHigh,
        LinearColour body,
        List<MaterialSource> sources,
        String note) {
    /** Common practice, no source. */
    private static final Set<String> AS_DIAMONDS = Set.of("diamond", "cubic-zirconia", "moissanite");

    public StoneMaterial {
        otherNames = List.copyOf(otherNames);
        sources = List.copyOf(sources);
    }

    /** A user's own material by density in g/cm3; see {@link #problem}. */
    public static StoneMaterial ofDensity(String name, double densityGPerCm3) {
        return new StoneMaterial(
                name,
                List.of(),
                name,
                densityGPerCm3,
                null,
                null,
                new LinearColour(0.9, 0.9, 0.9),
                List.of(MaterialSource.USER),
                "");
    }

    /** What is wrong with a stone's density in g/cm3 that a user wrote; empty if nothing is. Jet is 1.3, hematite 5.3. */
    public static Optional<String> problem(double densityGPerCm3) {
        return densityGPerCm3 >= 1 && densityGPerCm3 <= 10
                ? Optional.empty()
                : Optional.of(String.format(
                        Locale.ROOT,
                        "a density of %s g/cm^3 is no stone's; they lie between 1 and 10 g/cm^3",
                        densityGPerCm3));
    }

    /** Whether it is cut to a diamond's proportions, not deeper to keep weight and colour. */
    public boolean isCutAsDiamond() {
        return AS_DIAMONDS.contains(name);
    }

    @Override
    public String toString() {
        return name;
    }
}
