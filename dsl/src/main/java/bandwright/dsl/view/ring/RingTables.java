// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.ring;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import bandwright.dsl.construct.Body;
import bandwright.dsl.construct.Ring;
import bandwright.dsl.material.DiamondSieve;
import bandwright.dsl.material.MaterialSource;
import bandwright.dsl.material.MeleeTable;
import bandwright.dsl.material.Metal;
import bandwright.dsl.material.MetalCatalogue;
import bandwright.dsl.material.StoneCare;
import bandwright.dsl.material.StoneCut;
import bandwright.dsl.measure.PartMeasures;
import bandwright.dsl.measure.RowMeasures;
import bandwright.dsl.measure.SolderRoom;
import bandwright.dsl.model.StoneRow;
import bandwright.dsl.quantity.QuantityFormat;
import bandwright.dsl.view.Table;

/** What {@code show} shows as a table. */
public final class RingTables {
    /** Sizes are told to a thousandth of a millimetre. */
    private static final double SAME_MM = 5e-4;

    private RingTables() {}

    /** Each part's metal, volume, density and weight, and the whole; the densities' sources below. */
    public static Table weights(Ring ring) {
        List<List<String>> rows = new ArrayList<>();
        Set<String> sources = new LinkedHashSet<>();
        double volume = 0;
        double weight = 0;
        for (Body body : ring.bodies()) {
            PartMeasures measures = new PartMeasures(ring, body.name());
            Metal metal = body.section().metal();
            volume += measures.volumeMm3();
            weight += measures.weightG();
            rows.add(List.of(
                    body.name(),
                    metal.name(),
                    number(measures.volumeMm3()),
                    number(measures.densityGPerCm3()),
                    number(measures.weightG())));
            sources.add(metal.name() + ": " + metal.title() + "; density: "
                    + metal.sources().stream().map(MaterialSource::text).collect(Collectors.joining(" | ")));
        }
        rows.add(List.of("ring", "", number(volume), "", number(weight)));
        SolderRoom.of(ring)
                .ifPresent(room -> sources.add(
                        "Without solder: the gaps hold " + room.told() + ", were it as dense as the metals it joins"));
        return new Table(
                "Weights of the finished parts, without stones",
                List.of(
                        Table.Column.words("part"),
                        Table.Column.words("metal"),
                        Table.Column.numbers("volume", "mm^3"),
                        Table.Column.numbers("density", "g/cm^3"),
                        Table.Column.numbers("weight", "g")),
                rows,
                List.copyOf(sources));
    }

    /** The weight of each part and of the ring, were all of it in one metal. */
    public static Table weightsInAllMetals(Ring ring) {
        List<Table.Column> columns = new ArrayList<>();
        columns.add(Table.Column.words("metal"));
        columns.add(Table.Column.numbers("density", "g/cm^3"));
        List<Double> volumes = new ArrayList<>();
        for (Body body : ring.bodies()) {
            columns.add(Table.Column.numbers(body.name(), "g"));
            volumes.add(body.volumeMm3());
        }
        columns.add(Table.Column.numbers("ring", "g"));
        columns.add(Table.Column.words("recipe"));
        double whole = volumes.stream().mapToDouble(Double::doubleValue).sum();
        List<List<String>> rows = new ArrayList<>();
        for (Metal metal : MetalCatalogue.all()) {
            List<String> row = new ArrayList<>(List.of(metal.name(), number(metal.densityGPerCm3())));
            volumes.forEach(volume -> row.add(number(volume * metal.densityGPerCm3() / 1000)));
            row.add(number(whole * metal.densityGPerCm3() / 1000));
            row.add(metal.title());
            rows.add(row);
        }
        List<String> own = ring.bodies().stream()
                .map(body -> body.name() + " in " + body.section().metal().name())
                .toList();
        double weight = ring.bodies().stream()
                .mapToDouble(body -> body.volumeMm3() * body.section().metal().densityGPerCm3() / 1000)
                .sum();
        return new Table(
                "Weights in all metals",
                columns,
                rows,
                List.of("Each line is a ring of that metal alone, every part of it. As it is designed ("
                        + String.join(", ", own) + ") it weighs " + number(weight) + " g."));
    }

    /** The order list of stones. */
    public static Table stones(Ring ring) {
        List<List<String>> rows = new ArrayList<>();
        int count = 0;
        double carats = 0;
        for (StoneRow row : ring.design().stoneRows()) {
            RowMeasures measures = new RowMeasures(ring, row.name());
            count += measures.count();
            carats += measures.caratsTotal();
            rows.add(List.of(
                    row.name(),
                    row.cut().word() + " " + row.material().name(),
                    size(row),
                    sieve(row),
                    Integer.toString(measures.count()),
                    QuantityFormat.number(measures.caratsEach(), 4),
                    number(measures.caratsTotal()),
                    measures.gapMm().isPresent() ? number(measures.gapMm().getAsDouble()) : ""));
        }
        rows.add(List.of("all", "", "", "", Integer.toString(count), "", number(carats), ""));
        return new Table(
                "Stones to order" + heavier(ring),
                List.of(
                        Table.Column.words("row"),
                        Table.Column.words("stone"),
                        Table.Column.numbers("size", "mm"),
                        Table.Column.words("sieve"),
                        Table.Column.numbers("count", ""),
                        Table.Column.numbers("each", "ct"),
                        Table.Column.numbers("total", "ct"),
                        Table.Column.numbers("gap", "mm")),
                rows,
                notes(ring));
    }

    /** How far from the formula the tables lie that small round diamonds are sold by; empty where there are none, or they agree to a per cent. */
    private static String heavier(Ring ring) {
        List<Long> percents = ring.design().stoneRows().stream()
                .filter(RingTables::isSieved)
                .flatMap(row -> MeleeTable.compare(row.aroundMm()).stream())
                .map(table -> Math.round(100 * (table.publishedOverFormula() - 1)))
                .sorted()
                .toList();
        if (percents.stream().allMatch(percent -> percent == 0)) {
            return "";
        }
        long least = percents.get(0);
        long most = percents.get(percents.size() - 1);
        String range =
                least == most ? more(most) : (least > 0 ? Long.toString(least) : more(least)) + " to " + more(most);
        return ", carats by formula; tables of small diamonds say " + range;
    }

    private static String more(long percent) {
        return Math.abs(percent) + " % " + (percent < 0 ? "less" : "more");
    }

    /** Sieves between whose plates stones differ by more than the row bears. */
    private static List<String> widerThanWithin(StoneRow row) {
        double tolerance = row.toleranceMm();
        return DiamondSieve.nearest(row.aroundMm()).stream()
                .filter(sieve -> tolerance > 0
                        && (sieve.lowMm() < row.aroundMm() - tolerance - SAME_MM
                                || sieve.highMm() > row.aroundMm() + tolerance + SAME_MM))
                .map(sieve -> (sieve.retainedOn() + " " + sieve.passes()).strip() + " holds " + number(sieve.lowMm())
                        + " to " + number(sieve.highMm()) + " mm")
                .toList();
    }

    /** How far the tables that small round diamonds are sold by lie from the formula, and the trade's word for the size. */
    private static List<String> notes(Ring ring) {
        Set<String> notes = new LinkedHashSet<>();
        notes.add("Carats by the formula of the shape, for stones of usual depth: weigh the parcel.");
        for (StoneRow row : ring.design().stoneRows()) {
            List<String> bounds = new ArrayList<>();
            if (row.toleranceMm() > 0) {
                bounds.add("within " + number(row.toleranceMm()) + " mm of the size");
            }
            if (row.depthShare().isPresent()) {
                bounds.add("no deeper than " + number(row.depthMm()) + " mm");
            }
            if (!bounds.isEmpty()) {
                notes.add(row.name() + ": order stones " + String.join(", ", bounds)
                        + ", for seats and checks hold for these alone");
            }
            if (row.depthIsGuessed()) {
                notes.add(
                        "Coloured stones are cut deeper than diamonds: charts of calibrated emeralds, rubies and sapphires"
                                + " say 12 to 45 % more than the formula (Size and weight chart for faceted gemstones; Eastern International; n.d.): measure them and say it, such as depth 70 %");
            }
            if (!row.material().name().equals("diamond")) {
                notes.add(
                        row.material().name() + ": "
                                + StoneCare.of(row.material())
                                        .map(StoneCare::told)
                                        .orElse(
                                                "what it bears of heat, acid, ultrasound and steam is not on file, ask who sells it"));
            }
            if (!isSieved(row)) {
                continue;
            }
            String diameter = number(row.aroundMm()) + " mm";
            for (MeleeTable.Comparison table : MeleeTable.compare(row.aroundMm())) {
                double percent = 100 * (table.publishedOverFormula() - 1);
                notes.add(diameter + ": " + QuantityFormat.number(table.publishedCarats(), 4) + " ct each, "
                        + QuantityFormat.number(Math.abs(percent), 0) + " % "
                        + (percent < 0 ? "lighter" : "heavier") + ", by "
                        + table.source().text());
            }
            List<String> wider = widerThanWithin(row);
            if (!wider.isEmpty()) {
                notes.add(
                        row.name() + ": a sieve is wider than within " + number(row.toleranceMm()) + " mm of "
                                + diameter + " (" + String.join(", ", wider)
                                + "): order by size, and have the stones measured (Sieve chart; Diamond Consultants (India); n.d.)");
            }
            DiamondSieve.nearest(row.aroundMm()).stream()
                    .map(DiamondSieve::group)
                    .distinct()
                    .forEach(group -> notes.add(diameter + ": the trade's size group is " + group
                            + " (Polished Diamond Grading; SRDC India)"));
        }
        return List.copyOf(notes);
    }

    private static String size(StoneRow row) {
        return row.cut().hasTwoSizes()
                ? number(row.aroundMm()) + " by " + number(row.widthMm())
                : number(row.aroundMm());
    }

    private static String sieve(StoneRow row) {
        return isSieved(row)
                ? DiamondSieve.nearest(row.aroundMm()).stream()
                        .map(sieve -> (sieve.retainedOn() + " " + sieve.passes()).strip())
                        .collect(Collectors.joining(", "))
                : "";
    }

    private static boolean isSieved(StoneRow row) {
        return row.cut() == StoneCut.ROUND && row.material().name().equals("diamond");
    }

    private static String number(double value) {
        return QuantityFormat.number(value, 3);
    }
}
