// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.material;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A published table of the weights of round diamonds by diameter ({@code round_weights.csv}), to set beside the formula
 * of {@link StoneWeight}. The tables run heavier: by 7 to 25 % from 1.5 to 2.9 mm, by a third and more at 1 mm; from 3 mm
 * on one lies up to 12 % above the formula, another up to 7 % below. Which is right for a parcel only the scale tells.
 */
public final class MeleeTable {
    private final MaterialSource source;
    private final double[] diameters;
    private final double[] carats;

    private MeleeTable(MaterialSource source, double[] diameters, double[] carats) {
        this.source = source;
        this.diameters = diameters;
        this.carats = carats;
    }

    /**
     * What a table says of a diameter, beside the formula.
     *
     * @param source the table
     * @param diameterMm the diameter asked for
     * @param publishedCarats the table's weight, between rows in proportion to the cube of the diameter
     * @param formulaCarats 0.0061 x d^3 x 60.5 %
     */
    public record Comparison(MaterialSource source, double diameterMm, double publishedCarats, double formulaCarats) {
        /** How many times the formula's weight the table gives: 1.2 is a fifth heavier. */
        public double publishedOverFormula() {
            return publishedCarats / formulaCarats;
        }
    }

    /** The tables on file, always in the same order. */
    public static List<MeleeTable> all() {
        return Loaded.ALL;
    }

    /** Every table that covers a diameter, in mm, beside the formula; empty where none reaches. */
    public static List<Comparison> compare(double diameterMm) {
        double formula = StoneWeight.carats(StoneCut.ROUND, Loaded.DIAMOND, StoneSize.of(diameterMm));
        List<Comparison> comparisons = new ArrayList<>();
        for (MeleeTable table : all()) {
            table.carats(diameterMm)
                    .ifPresent(carats -> comparisons.add(new Comparison(table.source, diameterMm, carats, formula)));
        }
        return List.copyOf(comparisons);
    }

    public MaterialSource source() {
        return source;
    }

    /** The table's weight in carats for a diameter in mm; empty outside of its range. */
    public OptionalDouble carats(double diameterMm) {
        for (int i = 0; i < diameters.length; i++) {
            if (diameterMm == diameters[i]) {
                return OptionalDouble.of(carats[i]);
            }
            if (i > 0 && diameterMm > diameters[i - 1] && diameterMm < diameters[i]) {
                // Weight over the cube of the diameter changes little from row to row, so that is what is interpolated.
                double share = (diameterMm - diameters[i - 1]) / (diameters[i] - diameters[i - 1]);
                double before = carats[i - 1] / cube(diameters[i - 1]);
                double after = carats[i] / cube(diameters[i]);
                return OptionalDouble.of((before + share * (after - before)) * cube(diameterMm));
            }
        }
        return OptionalDouble.empty();
    }

    /** The diameter in mm to which the table gives a weight in carats, to a hundredth; empty outside of its range. */
    public OptionalDouble diameterMm(double wanted) {
        int last = diameters.length - 1;
        if (wanted < carats[0] || wanted > carats[last]) {
            return OptionalDouble.empty();
        }
        double low = diameters[0];
        double high = diameters[last];
        while (high - low > 1e-4) {
            double middle = (low + high) / 2;
            if (carats(middle).orElseThrow() < wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return OptionalDouble.of(Math.rint(100 * high) / 100);
    }

    private static double cube(double value) {
        return value * value * value;
    }

    private static final class Loaded {
        static final StoneMaterial DIAMOND =
                StoneCatalogue.find("diamond").orElseThrow(() -> new IllegalStateException("no diamond"));
        static final List<MeleeTable> ALL = read();

        private static List<MeleeTable> read() {
            Map<String, List<DataTable.Row>> rows = new LinkedHashMap<>();
            for (DataTable.Row row : DataTable.read("round_weights.csv")) {
                rows.computeIfAbsent(row.text("source_id"), id -> new ArrayList<>())
                        .add(row);
            }
            List<MeleeTable> tables = new ArrayList<>();
            rows.forEach((id, list) -> tables.add(new MeleeTable(
                    MaterialSource.of(id, list.get(0).text("how")).get(0),
                    list.stream().mapToDouble(row -> row.number("diameter_mm")).toArray(),
                    list.stream().mapToDouble(row -> row.number("carat")).toArray())));
            return List.copyOf(tables);
        }
    }
}
