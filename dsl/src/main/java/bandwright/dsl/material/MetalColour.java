// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.material;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The colour of a metal in pictures: our own approximation, good to tell red gold from yellow and from white, and for
 * nothing else.
 *
 * <p>Each element has a reflectance straight on, from memory of published optical constants ({@code
 * metal_colours.csv}). An alloy is their mean by mass, in which nickel, palladium and their like count several times:
 * they bleach gold far beyond their share, as a tenth of palladium by mass is enough for a white gold.
 */
public final class MetalColour {
    /** A metal of which only the density is known: a plain light grey. */
    static final LinearColour UNKNOWN = new LinearColour(0.7, 0.69, 0.67);

    private MetalColour() {}

    /** The colour of an alloy; {@code composition} in mass shares. */
    public static LinearColour of(Map<Element, Double> composition) {
        double red = 0;
        double green = 0;
        double blue = 0;
        double sum = 0;
        // Copper reddens gold, yet hardly shows in silver.
        double gold = 0.1
                + 0.9 * share(composition, "Au") / Math.max(1e-9, share(composition, "Au") + share(composition, "Ag"));
        for (Map.Entry<Element, Double> part : composition.entrySet()) {
            Pigment pigment = Pigments.BY_SYMBOL.get(part.getKey().symbol());
            if (pigment == null) {
                continue;
            }
            double share = part.getValue() * pigment.weight;
            if (part.getKey().symbol().equals("Cu")) {
                share *= gold;
            }
            red += share * pigment.colour.red();
            green += share * pigment.colour.green();
            blue += share * pigment.colour.blue();
            sum += share;
        }
        return sum == 0 ? UNKNOWN : new LinearColour(red / sum, green / sum, blue / sum);
    }

    private static double share(Map<Element, Double> composition, String symbol) {
        return composition.entrySet().stream()
                .filter(part -> part.getKey().symbol().equals(symbol))
                .mapToDouble(Map.Entry::getValue)
                .sum();
    }

    private record Pigment(LinearColour colour, double weight) {}

    private static final class Pigments {
        static final Map<String, Pigment> BY_SYMBOL = read();

        private static Map<String, Pigment> read() {
            Map<String, Pigment> pigments = new LinkedHashMap<>();
            for (DataTable.Row row : DataTable.read("metal_colours.csv")) {
                LinearColour colour = new LinearColour(row.number("red"), row.number("green"), row.number("blue"));
                pigments.put(row.text("element"), new Pigment(colour, row.number("weight")));
            }
            return pigments;
        }
    }
}
