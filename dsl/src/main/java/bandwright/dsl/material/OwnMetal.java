// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.material;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import org.jspecify.annotations.Nullable;

/** Metals that a user describes in a design, by recipe or by density. */
public final class OwnMetal {
    /** Stands for colour, and for the family where no recipe tells it: the trade has no word for it here. */
    private static final String OWN = "own";

    private static final List<String> PRECIOUS = List.of("Au", "Pt", "Pd", "Ag");

    /** Densest of all metals is osmium with 22.6 g/cm3, lightest lithium with 0.53: beyond that a density is a slip. */
    private static final double LIGHTEST = 0.5;

    private static final double DENSEST = 22.6;

    private OwnMetal() {}

    /**
     * A metal by recipe; the density follows from {@link MixingRule}.
     *
     * @param composition mass shares that add up to 1; see {@link MixingRule#problem}
     */
    public static Metal ofComposition(String name, Map<Element, Double> composition) {
        return new Metal(
                name,
                List.of(),
                name,
                family(composition),
                OWN,
                fineness(composition),
                composition,
                MixingRule.density(composition),
                DensityOrigin.MIXING_RULE,
                null,
                null,
                false,
                Nickel.of(composition),
                MetalColour.of(composition),
                List.of(MaterialSource.USER),
                "");
    }

    /** A metal by density in g/cm3; see {@link #problem}. */
    public static Metal ofDensity(String name, double densityGPerCm3) {
        return new Metal(
                name,
                List.of(),
                name,
                OWN,
                OWN,
                null,
                Map.of(),
                densityGPerCm3,
                DensityOrigin.GIVEN,
                null,
                null,
                false,
                Nickel.UNKNOWN,
                MetalColour.UNKNOWN,
                List.of(MaterialSource.USER),
                "");
    }

    /** What is wrong with a density in g/cm3 that a user wrote, as one sentence; empty if nothing is. */
    public static Optional<String> problem(double densityGPerCm3) {
        return densityGPerCm3 >= LIGHTEST && densityGPerCm3 <= DENSEST
                ? Optional.empty()
                : Optional.of(String.format(
                        Locale.ROOT,
                        "a density of %s g/cm^3 is no metal's; they lie between %s and %s g/cm^3",
                        densityGPerCm3,
                        LIGHTEST,
                        DENSEST));
    }

    /** The precious metal as which it may be sold, else what there is most of. */
    private static String family(Map<Element, Double> composition) {
        Optional<String> precious = LawfulFineness.metal(composition);
        if (precious.isPresent()) {
            return precious.get();
        }
        String most = composition.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(part -> part.getKey().name())
                .orElse(OWN);
        return most.equals("iron") ? "steel" : most;
    }

    /** The share of the precious metal it is sold as, else the largest, in a thousand, rounded down as a mark is: 999.9 is no more than 999. */
    private static @Nullable Integer fineness(Map<Element, Double> composition) {
        String family = family(composition);
        double largest = 0;
        for (Map.Entry<Element, Double> part : composition.entrySet()) {
            if (PRECIOUS.contains(part.getKey().symbol())) {
                largest = Math.max(largest, part.getValue());
                if (part.getKey().name().equals(family)) {
                    largest = part.getValue();
                    break;
                }
            }
        }
        // A hair's breadth up first: 0.585 x 1000 is 584.99… in binary.
        return largest == 0 ? null : Integer.valueOf((int) Math.floor(largest * 1000 + 1e-6));
    }
}
