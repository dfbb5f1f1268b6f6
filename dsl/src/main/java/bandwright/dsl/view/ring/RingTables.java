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
import bandwright.dsl.material.Metal;
import bandwright.dsl.material.MetalCatalogue;
import bandwright.dsl.material.PlainBand;
import bandwright.dsl.material.StoneCut;
import bandwright.dsl.measure.PartMeasures;
import bandwright.dsl.measure.RowMeasures;
import bandwright.dsl.model.Band;
import bandwright.dsl.model.StoneRow;
import bandwright.dsl.quantity.FingerSize;
import bandwright.dsl.quantity.QuantityFormat;
import bandwright.dsl.quantity.SizeSystem;
import bandwright.dsl.view.Table;

/** What {@code show} shows as a table. */
public final class RingTables {
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
            sources.add(metal.name() + ": " + metal.title() + "; density from "
                    + metal.sources().stream().map(MaterialSource::text).collect(Collectors.joining(" | ")));
        }
        rows.add(List.of("ring", "", number(volume), "", number(weight)));
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
        double whole = volumes.stream().mapToDouble(Double::doubleValue).sum();
        List<List<String>> rows = new ArrayList<>();
        for (Metal metal : MetalCatalogue.all()) {
            List<String> row = new ArrayList<>(List.of(metal.name(), number(metal.densityGPerCm3())));
            volumes.forEach(volume -> row.add(number(volume * metal.densityGPerCm3() / 1000)));
            row.add(number(whole * metal.densityGPerCm3() / 1000));
            rows.add(row);
        }
        return new Table("Weights in all metals", columns, rows, List.of());
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
                "Stones to order",
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
                List.of("Carats by the formula of the shape, which tables of small stones exceed: weigh the parcel."));
    }

    private static String size(StoneRow row) {
        return row.cut().hasTwoSizes()
                ? number(row.aroundMm()) + " by " + number(row.widthMm())
                : number(row.aroundMm());
    }

    private static String sieve(StoneRow row) {
        boolean sieved = row.cut() == StoneCut.ROUND && row.material().name().equals("diamond");
        return sieved
                ? DiamondSieve.nearest(row.aroundMm()).stream()
                        .map(sieve -> (sieve.retainedOn() + " " + sieve.passes()).strip())
                        .collect(Collectors.joining(", "))
                : "";
    }

    /** The finger's size in every system, and the nearest standard size of each. */
    public static Table sizes(Ring ring) {
        List<List<String>> rows = new ArrayList<>();
        for (Band band : ring.design().bands()) {
            FingerSize bore = band.finger().bore();
            for (SizeSystem system : SizeSystem.values()) {
                FingerSize nearest = bore.nearestStandard(system);
                rows.add(List.of(
                        band.name(),
                        system.fullName(),
                        bore.in(system).text(),
                        nearest.text(),
                        number(nearest.circumferenceMm() - bore.circumferenceMm()),
                        system.standard()));
            }
        }
        return new Table(
                "Finger size in every system",
                List.of(
                        Table.Column.words("band"),
                        Table.Column.words("system"),
                        Table.Column.words("size"),
                        Table.Column.words("nearest standard size"),
                        Table.Column.numbers("larger by", "mm of circumference"),
                        Table.Column.words("by")),
                rows,
                List.of());
    }

    /** The strips from which plain rings of these sizes are bent. */
    public static Table blanks(Ring ring) {
        List<List<String>> rows = new ArrayList<>();
        for (Band band : ring.design().bands()) {
            // A band that changes on its way round is forged or filed from a strip that holds its largest place.
            double thickness = 0;
            double width = 0;
            for (Band.Station station : band.stations()) {
                thickness = Math.max(thickness, station.section().heightMm());
                width = Math.max(width, station.section().widthMm());
            }
            double diameter = 2 * band.finger().innerRadiusMm();
            rows.add(List.of(
                    band.name(),
                    number(new PlainBand(diameter, thickness, width).blankLengthMm()),
                    number(width),
                    number(thickness)));
        }
        return new Table(
                "Blank of a plain ring",
                List.of(
                        Table.Column.words("band"),
                        Table.Column.numbers("length", "mm"),
                        Table.Column.numbers("width", "mm"),
                        Table.Column.numbers("thickness", "mm")),
                rows,
                List.of("Length: pi times inner diameter plus thickness; for a straight strip of even thickness."));
    }

    private static String number(double value) {
        return QuantityFormat.number(value, 3);
    }
}
