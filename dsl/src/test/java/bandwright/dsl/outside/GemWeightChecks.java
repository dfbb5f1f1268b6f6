// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.outside;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import bandwright.dsl.material.OutsideData;
import bandwright.dsl.material.StoneCatalogue;
import bandwright.dsl.material.StoneCut;
import bandwright.dsl.material.StoneMaterial;
import bandwright.dsl.material.StoneSize;
import bandwright.dsl.material.StoneWeight;

/**
 * Our formulas for round and oval coloured stones against charts of calibrated stones ({@code gem_calibrated_weights.csv}).
 * Coloured stones are cut deeper than a diamond, and the charts round to hundredths of a carat: ours are lighter.
 */
final class GemWeightChecks {
    /** Shapes the language has not. */
    static final Set<String> NOT_OURS = Set.of("marquise", "octagon");

    private GemWeightChecks() {}

    static List<OutsideCheck> all() {
        List<OutsideCheck> checks = new ArrayList<>();
        for (OutsideData.Row row : rows()) {
            double published = row.number("carat");
            double ours = StoneWeight.carats(cut(row), material(row), size(row));
            checks.add(OutsideCheck.within(what(row), published, ours, "ct", 0, row)
                    .differingBy(-0.31 * published, -0.02 * published, "cut deeper than a diamond"));
        }
        return checks;
    }

    private static List<OutsideData.Row> rows() {
        return OutsideData.rows("gem_calibrated_weights.csv").stream()
                .filter(row -> !NOT_OURS.contains(row.text("shape")))
                .toList();
    }

    static Set<String> shapes() {
        Set<String> shapes = new TreeSet<>();
        OutsideData.rows("gem_calibrated_weights.csv").forEach(row -> shapes.add(row.text("shape")));
        return shapes;
    }

    private static String what(OutsideData.Row row) {
        return row.text("shape") + " " + row.text("material") + ", " + row.text("length_mm") + " x "
                + row.text("width_mm") + " mm";
    }

    private static StoneCut cut(OutsideData.Row row) {
        return row.text("shape").equals("round") ? StoneCut.ROUND : StoneCut.OVAL;
    }

    /** The charts have one column for ruby and sapphire, which are one mineral. */
    private static StoneMaterial material(OutsideData.Row row) {
        String name = row.text("material").equals("emerald") ? "emerald" : "ruby";
        return StoneCatalogue.find(name).orElseThrow();
    }

    private static StoneSize size(OutsideData.Row row) {
        return new StoneSize(row.number("length_mm"), row.number("width_mm"));
    }
}
