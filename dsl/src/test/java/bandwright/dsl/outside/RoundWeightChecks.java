// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.outside;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.material.OutsideData;
import bandwright.dsl.material.StoneCatalogue;
import bandwright.dsl.material.StoneCut;
import bandwright.dsl.material.StoneSize;
import bandwright.dsl.material.StoneWeight;

/**
 * Our formula for round diamonds against three published tables ({@code diamond_round_weights.csv}) and a sieve chart
 * ({@code diamond_sieves.csv}). The tables are known to be heavier for small stones: the ranges say by how much.
 */
final class RoundWeightChecks {
    private RoundWeightChecks() {}

    static List<OutsideCheck> tables() {
        List<OutsideCheck> checks = new ArrayList<>();
        for (OutsideData.Row row : OutsideData.rows("diamond_round_weights.csv")) {
            double diameter = row.number("diameter_mm");
            OutsideCheck check = check(row, diameter, diameter + " mm");
            checks.add(
                    switch (row.text("source_id")) {
                        case "AAKASH" ->
                            diameter < 1.15
                                    ? ratio(check, 1.32, 1.86, "heavier by a third and more at 1 mm")
                                    : diameter < 2.95
                                            ? ratio(check, 1.07, 1.24, "melee: heavier by 7 to 24 %")
                                            : ratio(check, 0.98, 1.12, "2 % lighter to 12 % heavier");
                        case "CHATHAM" -> ratio(check, 0.93, 1.05, "within the 10 % its chart claims");
                        default ->
                            diameter < 1.45
                                    ? ratio(check, 1.34, 1.55, "its smallest sizes run on far too heavy")
                                    : ratio(check, 1.14, 1.25, "melee: heavier by 14 to 25 %");
                    });
        }
        return checks;
    }

    static List<OutsideCheck> sieves() {
        List<OutsideCheck> checks = new ArrayList<>();
        for (OutsideData.Row row : OutsideData.rows("diamond_sieves.csv")) {
            double diameter = (row.number("mm_low") + row.number("mm_high")) / 2;
            OutsideCheck check = check(row, diameter, "sieve " + row.text("retained_on"));
            checks.add(
                    diameter < 1.05
                            ? ratio(check, 1.35, 2.13, "heavier by a third and more at 1 mm")
                            : diameter < 2.68
                                    ? ratio(check, 1.04, 1.19, "melee: heavier by 4 to 19 %")
                                    : ratio(check, 0.96, 1.04, "within 4 %"));
        }
        return checks;
    }

    private static OutsideCheck check(OutsideData.Row row, double diameter, String what) {
        double ours = StoneWeight.carats(
                StoneCut.ROUND, StoneCatalogue.find("diamond").orElseThrow(), StoneSize.of(diameter));
        return OutsideCheck.within("round diamond, " + what, row.number("carat"), ours, "ct", 0, row);
    }

    /** Published over ours between two ratios. */
    private static OutsideCheck ratio(OutsideCheck check, double least, double most, String why) {
        double published = check.published();
        return check.differingBy(published / most - published, published / least - published, why);
    }
}
