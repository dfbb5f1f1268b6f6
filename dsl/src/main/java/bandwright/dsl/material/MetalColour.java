// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.material;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The colour of a metal in pictures: good to tell red gold from yellow and from white, and for nothing else.
 *
 * <p>Each element has a reflectance straight on ({@code metal_colours.csv}: measured where a source stands beside it). How they
 * mix is our own approximation: the mean by mass, in which nickel, palladium and their like count several times, for
 * they bleach gold far beyond their share, as a tenth of palladium by mass is enough for a white gold. Copper reddens gold beyond
 * what it is itself; zinc and tin take that away and turn copper to the
 * yellow of brass.
 */
public final class MetalColour {
    /** A metal of which only the density is known: a plain light grey. */
    static final LinearColour UNKNOWN = new LinearColour(0.7, 0.69, 0.67);

    /** What copper lends to gold: redder than copper alone, our approximation by eye. */
    private static final LinearColour COPPER_IN_GOLD = new LinearColour(0.96, 0.47, 0.5);

    /** Our approximation, by eye. */
    private static final LinearColour BRASS = new LinearColour(0.92, 0.76, 0.36);

    /** Share of zinc and tin, of them and copper, from which they are as yellow as brass. */
    private static final double YELLOW = 0.25;

    private MetalColour() {}

    /** The colour of an alloy; {@code composition} in mass shares. */
    public static LinearColour of(Map<Element, Double> composition) {
        double red = 0;
        double green = 0;
        double blue = 0;
        double sum = 0;
        for (Map.Entry<Element, Double> part : composition.entrySet()) {
            String symbol = part.getKey().symbol();
            Pigment pigment = Pigments.BY_SYMBOL.get(symbol);
            if (pigment == null) {
                continue;
            }
            boolean copper = symbol.equals("Cu");
            LinearColour colour = copper ? copper(pigment.colour, composition) : pigment.colour;
            double share = part.getValue() * pigment.weight;
            if (copper) {
                // Copper hardly shows in silver, and a little of it hardly in gold.
                double silver = ratio(composition, "Ag", "Au", "Cu");
                double much = Math.min(1, 6 * ratio(composition, "Cu", "Au", "Ag"));
                share *= much * (1 - silver) * (1 - silver);
            }
            red += share * colour.red();
            green += share * colour.green();
            blue += share * colour.blue();
            sum += share;
        }
        return sum == 0 ? UNKNOWN : new LinearColour(red / sum, green / sum, blue / sum);
    }

    private static LinearColour copper(LinearColour alone, Map<Element, Double> composition) {
        double gold = Math.min(1, 2 * ratio(composition, "Au", "Cu"));
        double bleaching = share(composition, "Zn") + share(composition, "Sn");
        double yellow = Math.min(1, bleaching / Math.max(1e-9, bleaching + share(composition, "Cu")) / YELLOW);
        return mixed(mixed(alone, COPPER_IN_GOLD, gold), BRASS, yellow);
    }

    private static LinearColour mixed(LinearColour one, LinearColour other, double share) {
        return new LinearColour(
                one.red() + share * (other.red() - one.red()),
                one.green() + share * (other.green() - one.green()),
                one.blue() + share * (other.blue() - one.blue()));
    }

    /** The share of one element of what there is of it and others. */
    private static double ratio(Map<Element, Double> composition, String symbol, String... others) {
        double one = share(composition, symbol);
        double all = one;
        for (String other : others) {
            all += share(composition, other);
        }
        return one / Math.max(1e-9, all);
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
