// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.outside;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import bandwright.dsl.material.BrilliantProportions;
import bandwright.dsl.material.Casting;
import bandwright.dsl.material.Element;
import bandwright.dsl.material.Elements;
import bandwright.dsl.material.GirdleThickness;
import bandwright.dsl.material.MetalCatalogue;
import bandwright.dsl.material.MixingRule;
import bandwright.dsl.material.OutsideData;
import bandwright.dsl.material.PlainBand;
import bandwright.dsl.material.StoneCatalogue;
import bandwright.dsl.material.StoneCut;
import bandwright.dsl.material.StoneMaterial;
import bandwright.dsl.material.StoneSize;
import bandwright.dsl.material.StoneWeight;
import bandwright.dsl.quantity.FingerSize;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.SizeSystem;
import bandwright.dsl.quantity.Unit;

/** Calculations published by others ({@code worked_examples.csv}), each done again with our code. */
final class WorkedExamples {
    /** Examples for which the product has no operation, and why; every other row must be computed. */
    static final Map<String, String> NOT_OURS = Map.of(
            "S04", "the language has no marquise",
            "S05", "the language has no triangular stone",
            "S06", "the language has no triangular stone");

    private static final Unit PENNYWEIGHT = Unit.parse("dwt").orElseThrow();
    private static final double GRAMS_PER_PENNYWEIGHT = PENNYWEIGHT.factor();
    private static final StoneMaterial DIAMOND = StoneCatalogue.find("diamond").orElseThrow();
    private static final PlainBand MODEL = new PlainBand(19.95, 1.93, 4.05);
    private static final PlainBand CASTING = new PlainBand(19.63, 1.91, 4.12);
    private static final PlainBand FINISHED = new PlainBand(19.82, 1.72, 3.82);
    /** Not stated by the source of R01 to R03 but implied by all three of its masses. */
    private static final double FITTED_DENSITY = 11.0366;

    private final List<OutsideCheck> checks = new ArrayList<>();
    private final Map<String, OutsideData.Row> rows = new LinkedHashMap<>();

    private WorkedExamples() {
        OutsideData.rows("worked_examples.csv").forEach(row -> rows.put(row.text("id"), row));
        casting();
        bands();
        alloys();
        stones();
    }

    static List<OutsideCheck> all() {
        return List.copyOf(new WorkedExamples().checks);
    }

    private void casting() {
        add("W01", Casting.metalForPattern(5, 1, 13.5, 0.1), 0.005);
        add("W02", Casting.metalForPattern(43.5 - 38, 1, 10.5, 0), 0.005);
        add("W03", Casting.metalForPattern(5.5, 1, 15.2, 0), 0.005);
        add("W04", Casting.metalForPattern(0.7, 1, 21.45, 0), 0.0051);
        add("W05", Casting.metalForPattern(0.56, 1.09, 10.36, 0), 0.005);
        add("W06", Casting.metalForPattern(0.56, 1.09, 10.36, 0.1), 0.005);
        add("W07", Casting.inAnotherMetal(4, 10.40, 13.07), 0.01, "the page rounds the ratio to 1.25, yet prints 5.02");
        add(
                "W08",
                Casting.inAnotherMetal(4, 15.5, 20.7),
                0.05,
                "rounded to 0.1 g; densities implied by the page's factor");
        add(
                "W09",
                Casting.inAnotherMetal(4, 15.5, 11.4),
                0.07,
                "rounded to 0.1 g or more; densities implied by the page's factor");
        add("W10", Casting.inAnotherMetal(1, 10.36, 13.08), 0.01, "the table is rounded upwards");
        known(
                "W11",
                Casting.inAnotherMetal(1, 10.36, 15.60),
                0.01,
                0.02,
                "the table mixes divisors: this row was divided by 10.5");
        known(
                "W12",
                Casting.inAnotherMetal(1, 10.36, 21.45),
                0.025,
                0.035,
                "the table mixes divisors: this row was divided by 10.5");
        add("W13", Casting.inAnotherMetal(1, 15.60, 21.45), 0.0051);
        add("W14", Quantity.carats(1).count(PENNYWEIGHT), 0.00005);
        add("W15", Casting.metalForPattern(0.2, 1, 13.07, 0) / GRAMS_PER_PENNYWEIGHT, 0.005);
    }

    private void bands() {
        add(
                "R01",
                FINISHED.volumeMm3() / CASTING.volumeMm3(),
                0.0002,
                "arithmetic only: the masses were computed, not weighed");
        add("R02", CASTING.volumeMm3() / MODEL.volumeMm3(), 0.0001, "arithmetic only, as R01");
        add("R03-model", MODEL.grams(FITTED_DENSITY), 0.0005, "density fitted to the three masses of R03");
        add("R03-casting", CASTING.grams(FITTED_DENSITY), 0.0005, "density fitted to the three masses of R03");
        add("R03-finished", FINISHED.grams(FITTED_DENSITY), 0.0005, "density fitted to the three masses of R03");
        add("R04", less(FINISHED.innerDiameterMm(), MODEL.innerDiameterMm()), 0.005);
        add("R05", less(FINISHED.widthMm(), MODEL.widthMm()), 0.005);
        add("R06", less(FINISHED.thicknessMm(), MODEL.thicknessMm()), 0.005);
        add("R07", 100 * (1 - FINISHED.volumeMm3() / MODEL.volumeMm3()), 0.01);
        add("R08", new PlainBand(18.4, 1, 5).blankLengthMm(), 0.06, "the page takes 3.145 for pi and rounds to 1 mm");
        add("R09", new FingerSize(SizeSystem.DE, 17.35).circumferenceMm(), 0.05);
        double wider = 450 * new PlainBand(18, 1.7, 5).volumeMm3() / new PlainBand(18, 1.7, 4).volumeMm3();
        known("R10", wider, -37.6, -37.4, "the page is inconsistent: it calls 450 to 600 a quarter more; 562.5 is");
        FingerSize size = new FingerSize(SizeSystem.UK, 14);
        double change = new PlainBand(size.plus(2).diameterMm(), 1.8, 7).grams(20.7)
                - new PlainBand(size.diameterMm(), 1.8, 7).grams(20.7);
        known("R11", change, -0.36, -0.33, "\"almost a gram\": an order of magnitude; thickness assumed");
        known("R12", 100 * Casting.massLostByShrinking(0.035), -0.37, -0.35, "the page's rule of three; ours is exact");
        double nineCarat = MetalCatalogue.find("yellow-gold-375").orElseThrow().densityGPerCm3();
        add("R13", 0.28 * nineCarat, 0.05, "2 dwt take 0.28 cm3 of 9 carat; rounded to 0.1 g");
    }

    /** By how many per cent one length is less than another. */
    private static double less(double mm, double thanMm) {
        Quantity than = Quantity.millimetres(thanMm);
        return than.minus(Quantity.millimetres(mm)).dividedBy(than).count(Unit.PERCENT);
    }

    private void alloys() {
        Element gold = element("Au");
        add("A01", 100 * MixingRule.volumeShare(alloy("Au", 75, "Ag", 12.5, "Cu", 12.5), gold), 0.1);
        add("A02", 100 * MixingRule.volumeShare(alloy("Au", 33.3, "Ag", 33.35, "Cu", 33.35), gold), 0.1);
        add(
                "A03",
                MixingRule.density(alloy("Au", 75, "Ag", 15, "Cu", 10)),
                0.02,
                "0.1 % of alloying contraction and rounding");
        add("A04", MixingRule.density(alloy("Au", 58.5, "Ag", 30, "Cu", 11.5)), 0.02, "0.1 %, as A03");
        add("A05", MixingRule.density(alloy("Ag", 92.5, "Cu", 7.5)), 0.005);
        add(
                "A06",
                MixingRule.density(alloy("Pt", 90, "Ir", 10)),
                0.02,
                "0.1 %: platinum is 21.45 to 21.5 in the handbooks");
    }

    private void stones() {
        StoneSize first = new StoneSize(6.05, 6.11);
        add("S01", StoneWeight.carats(StoneCut.ROUND, DIAMOND, first, 3.63, GirdleThickness.THIN_TO_MEDIUM), 0.0001);
        double second = StoneWeight.carats(
                StoneCut.ROUND, DIAMOND, new StoneSize(7.02, 7.17), 4.47, GirdleThickness.THIN_TO_MEDIUM);
        add("S02", second, 0.002, "the page rounds the mean diameter to 7.10");
        add("S03", StoneWeight.carats(StoneCut.ROUND, DIAMOND, first, 3.63, GirdleThickness.SLIGHTLY_THICK), 0.0001);
        double diamond = StoneWeight.carats(StoneCut.ROUND, DIAMOND, StoneSize.of(6.5));
        add("S07", diamond, 0.02, "one carat and 6.5 mm are both nominal");
        StoneMaterial moissanite = StoneCatalogue.find("moissanite").orElseThrow();
        double ratio = StoneWeight.carats(StoneCut.ROUND, moissanite, StoneSize.of(6.5)) / diamond;
        known(
                "S08",
                ratio,
                0.03,
                0.04,
                "against 1.00 ct of diamond: moissanites are cut shallower, or the page rounds");
        BrilliantProportions brilliant = BrilliantProportions.REFERENCE;
        add("S09", brilliant.crownHeightPercent(), 0.05);
        add("S10", brilliant.pavilionDepthPercent(), 0.05);
        add("S11", brilliant.totalDepthPercent(), 0.05);
        add(
                "S12",
                Quantity.millimetres(2.5).times(Quantity.of(90, Unit.PERCENT)).count(Unit.MILLIMETRE),
                1e-9);
        add("S13", new StoneSize(7.42, 3.61).lengthToWidth(), 0.001, "the page rounds upwards");
        add("S14", new StoneSize(10.83, 4.97).lengthToWidth(), 0.0005);
    }

    private void add(String id, double ours, double tolerance) {
        add(id, ours, tolerance, "");
    }

    private void add(String id, double ours, double tolerance, String why) {
        checks.add(check(id, ours, tolerance).because(why));
    }

    private void known(String id, double ours, double least, double most, String why) {
        checks.add(check(id, ours, 0).differingBy(least, most, why));
    }

    private OutsideCheck check(String id, double ours, double tolerance) {
        OutsideData.Row row = Objects.requireNonNull(rows.get(id), id);
        double published = row.number("published");
        return OutsideCheck.within(
                id + " " + row.text("topic") + ": " + row.text("inputs") + ": " + row.text("quantity"),
                published,
                ours,
                row.text("unit"),
                tolerance,
                row);
    }

    private static Map<Element, Double> alloy(Object... symbolsAndPercents) {
        Map<Element, Double> alloy = new LinkedHashMap<>();
        for (int i = 0; i < symbolsAndPercents.length; i += 2) {
            alloy.put(
                    element((String) symbolsAndPercents[i]), ((Number) symbolsAndPercents[i + 1]).doubleValue() / 100);
        }
        return alloy;
    }

    private static Element element(String symbol) {
        return Elements.find(symbol).orElseThrow();
    }
}
