// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import bandwright.dsl.check.Findings;
import bandwright.dsl.check.Verdict;
import bandwright.dsl.construct.Body;
import bandwright.dsl.construct.Ring;
import bandwright.dsl.construct.Workshop;
import bandwright.dsl.material.Casting;
import bandwright.dsl.material.Metal;
import bandwright.dsl.measure.PartMeasures;
import bandwright.dsl.model.Design;
import bandwright.dsl.pattern.AllowanceReader;
import bandwright.dsl.pattern.Allowances;
import bandwright.dsl.pattern.AsCast;
import bandwright.dsl.pattern.Shrinkage;
import bandwright.dsl.pattern.WithStock;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.QuantityFormat;
import bandwright.dsl.quantity.Unit;
import bandwright.dsl.syntax.Property;
import bandwright.dsl.view.Table;

/**
 * What goes to the caster and what comes back: each part's weight finished, as cast, in wax and in resin, and the metal to
 * melt for it. Patterns are as large as the allowances make them; sprues are not known here, as their headings say.
 */
public final class CastingTable {
    /** The trade's convention: Stuller, 2012; AU Enterprises; Romanoff International. */
    private static final double WAX_G_PER_CM3 = 1;

    /** Middle of 1.05 to 1.15 g/cm3, from memory; one maker's is published as 1.09 (Casting BlueCast notes, K. Kramer). */
    private static final double RESIN_G_PER_CM3 = 1.1;

    /** Romanoff International, Wax weight vs metal weight (Casting 101). */
    private static final double BUTTON = 0.1;

    private final Findings findings;
    private final String braces;
    private final Allowances allowances;
    private final Optional<Quantity> button;
    private final Optional<Quantity> pattern;
    private final Ring finished;
    private final Ring cast;
    private final Ring stocked;
    private final BenchParts bench;
    private final List<List<String>> rows = new ArrayList<>();
    private final Map<String, Double> charges = new LinkedHashMap<>();

    private CastingTable(Design design, Workshop workshop, AllowanceReader reader, Findings findings, String braces) {
        this.findings = findings;
        this.braces = braces;
        allowances = reader.allowances();
        button = reader.amount(Property.Word.BUTTON, percent(0), percent(200));
        pattern = reader.amount(Property.Word.PATTERN, density(0.5), density(3));
        bench = new BenchParts(design);
        finished = workshop.ring(design);
        Design asCast = AsCast.of(design);
        cast = workshop.ring(asCast);
        stocked = workshop.ring(WithStock.of(asCast, allowances));
        // All parts at once, so that both processors have work.
        finished.bodies();
        stocked.bodies();
    }

    /**
     * @param reader the block in which the user says how patterns are made; what is not said is by the trade's habit
     * @param findings of the checks: those that concern the caster are told first
     * @param braces how a statement with that block begins, such as {@code show casting} and its opening brace, for advice on what to write in it
     * @throws bandwright.dsl.model.Fault if one of its figures cannot be meant, or a part cannot be made
     */
    public static Table of(Design design, Workshop workshop, AllowanceReader reader, Findings findings, String braces) {
        return new CastingTable(design, workshop, reader, findings, braces).table();
    }

    private Table table() {
        double[] sums = new double[6];
        for (Body body : stocked.bodies()) {
            double[] figures = figures(body);
            for (int i = 0; i < sums.length; i++) {
                sums[i] += figures[i];
            }
            row(body.name(), body.section().metal().name(), figures);
            charges.merge(body.section().metal().name(), figures[5], Double::sum);
        }
        for (String part : bench.ownMetal()) {
            double grams = finishedG(part, bench.partedOff(part));
            sums[0] += grams;
            row(part, finished.design().metal(part).name(), new double[] {grams, 0, 0, 0, 0, 0});
        }
        for (String part : bench.pouredAtBench()) {
            String metal = finished.design().metal(part).name();
            double grams = finishedG(part, bench.partedOff(part));
            double raw = Uncut.rawWeightG(finished, part);
            double charge = raw * (1 + buttonShare());
            double[] figures = {grams, raw - grams, 0, raw, 0, charge};
            for (int i = 0; i < sums.length; i++) {
                sums[i] += figures[i];
            }
            row(part, metal, figures);
            charges.merge(metal, charge, Double::sum);
        }
        row("all", "", sums);
        return new Table("From pattern to finished piece", columns(), rows, notes());
    }

    /** Finished, cut at the bench, left to file, cast, pattern, and metal to charge: all in grams. */
    private double[] figures(Body body) {
        Metal metal = body.section().metal();
        double perMm3 = metal.densityGPerCm3() / 1000;
        double castG = new PartMeasures(cast, body.name()).weightG();
        double finishedG = finishedG(body.name(), bench.partedOff(body.name()));
        double withStockG = body.volumeMm3() * perMm3;
        boolean poured = bench.poured().contains(body.name());
        double patternG = poured ? 0 : body.volumeMm3() * ratio(body) * patternDensity() / 1000;
        double charge = Casting.metalForPattern(
                withStockG / perMm3 * patternDensity() / 1000, patternDensity(), metal.densityGPerCm3(), buttonShare());
        return new double[] {finishedG, castG - finishedG, withStockG - castG, withStockG, patternG, charge};
    }

    private double finishedG(String part, Set<String> pieces) {
        return finishedG(part) + pieces.stream().mapToDouble(this::finishedG).sum();
    }

    /** Nothing for a part that is no part any more because it was parted into pieces. */
    private double finishedG(String part) {
        boolean there =
                finished.sections().stream().anyMatch(section -> section.name().equals(part));
        return there ? new PartMeasures(finished, part).weightG() : 0;
    }

    private double ratio(Body body) {
        if (!allowances.shrinks()) {
            return 1;
        }
        double bore = body.section().band().finger().innerRadiusMm();
        return new Shrinkage(allowances, bore).volumeRatio(body.mesh());
    }

    private double patternDensity() {
        return pattern.map(given -> given.count(unit("g/cm^3"))).orElse(WAX_G_PER_CM3);
    }

    private double buttonShare() {
        return button.map(Quantity::value).orElse(BUTTON);
    }

    private void row(String part, String metal, double[] figures) {
        List<String> cells = new ArrayList<>(List.of(part, metal));
        for (int i = 0; i < figures.length; i++) {
            cells.add(number(figures[i]));
            if (i == 4 && pattern.isEmpty()) {
                cells.add(number(figures[i] / WAX_G_PER_CM3 * RESIN_G_PER_CM3));
            }
        }
        rows.add(cells);
    }

    private List<Table.Column> columns() {
        List<Table.Column> columns = new ArrayList<>(List.of(
                Table.Column.words("part"),
                Table.Column.words("metal"),
                Table.Column.numbers("finished", "g"),
                Table.Column.numbers("cut at the bench", "g"),
                Table.Column.numbers("stock to file", "g"),
                Table.Column.numbers("cast", "g")));
        if (pattern.isPresent()) {
            columns.add(Table.Column.numbers("pattern", "g"));
        } else {
            columns.add(Table.Column.numbers("pattern in wax", "g"));
            columns.add(Table.Column.numbers("pattern in resin", "g"));
        }
        columns.add(Table.Column.numbers("metal to charge, no sprues", "g"));
        return columns;
    }

    private List<String> notes() {
        // First what keeps the caster from pouring, then what changes the order, then how the figures came about.
        List<String> notes = new ArrayList<>();
        List<Step.Basis> faults = PatternFaults.of(finished.design(), bench);
        findings.with(Verdict.FAILED).stream()
                .filter(finding -> finding.check().equals("casting-wall")
                        || faults.stream().anyMatch(basis -> basis.holds(finding)))
                .forEach(finding -> notes.add(Sentences.of("casting.failed", finding.sentence())));
        Map<String, Metal> metals = new LinkedHashMap<>();
        stocked.bodies()
                .forEach(body ->
                        metals.put(body.section().metal().name(), body.section().metal()));
        name(
                notes,
                "casting.turned",
                metals.values().stream().filter(RawParts::isTurned).toList());
        metals.values().stream().filter(metal -> !RawParts.isTurned(metal)).forEach(metal -> notes.add(melting(metal)));
        if (!allowances.shrinks()) {
            notes.add(Sentences.of("casting.no-shrinkage", braces));
        } else if (allowances.shrinksEvenly()) {
            notes.add(Sentences.of("casting.shrinkage", percentText(allowances.around())));
        } else {
            notes.add(Sentences.of(
                    "casting.shrinkage.directed",
                    percentText(allowances.around()),
                    percentText(allowances.across()),
                    percentText(allowances.out())));
        }
        notes.add(Sentences.of("casting.finishing"));
        named(notes, "casting.poured", bench.poured());
        named(notes, "casting.bench", bench.ownMetal());
        Set<String> parted = new LinkedHashSet<>();
        stocked.bodies().forEach(body -> parted.addAll(bench.partedOff(body.name())));
        named(notes, "casting.parted", parted);
        if (charges.size() > 1) {
            List<String> each = new ArrayList<>();
            charges.forEach((metal, grams) -> each.add(Quantity.grams(grams) + " of " + metal));
            notes.add(Sentences.of("casting.charges", String.join(", ", each)));
        }
        notes.add(
                button.isPresent()
                        ? Sentences.of("casting.button.given", percentText(buttonShare()))
                        : Sentences.of("casting.button"));
        notes.add(
                pattern.isPresent()
                        ? Sentences.of("casting.pattern", pattern.get().toString())
                        : Sentences.of("casting.wax-and-resin"));
        notes.add(Sentences.of("casting.stages"));
        return notes;
    }

    private static String melting(Metal metal) {
        Double solidus = metal.solidusC();
        Double liquidus = metal.liquidusC();
        return solidus == null || liquidus == null
                ? Sentences.of("casting.melting-unknown", metal.name())
                : Sentences.of(
                        "casting." + RawParts.meltingKey(metal),
                        metal.name(),
                        QuantityFormat.number(solidus, 0),
                        QuantityFormat.number(liquidus, 0));
    }

    private static void name(List<String> notes, String key, List<Metal> metals) {
        if (!metals.isEmpty()) {
            notes.add(Sentences.of(
                    key, Steps.list(metals.stream().map(Metal::name).toList())));
        }
    }

    private static void named(List<String> notes, String key, Set<String> parts) {
        if (!parts.isEmpty()) {
            notes.add(Sentences.of(key, String.join(", ", parts)));
        }
    }

    private static String percentText(double share) {
        return QuantityFormat.number(100 * share, 3) + " %";
    }

    private static Quantity percent(double percent) {
        return Quantity.of(percent, Unit.PERCENT).in(Unit.PERCENT);
    }

    private static Quantity density(double gramsPerCm3) {
        return Quantity.of(gramsPerCm3, unit("g/cm^3"));
    }

    private static Unit unit(String text) {
        return Unit.parse(text).orElseThrow();
    }

    private static String number(double grams) {
        // A difference of two equal bodies may come out a hair below nothing.
        return QuantityFormat.number(Math.abs(grams) < 5e-7 ? 0 : grams, 3);
    }
}
