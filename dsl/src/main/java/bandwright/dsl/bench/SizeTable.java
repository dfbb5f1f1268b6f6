// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import bandwright.dsl.construct.Ring;
import bandwright.dsl.material.RivalLetters;
import bandwright.dsl.model.Band;
import bandwright.dsl.model.StoneRow;
import bandwright.dsl.quantity.FingerSize;
import bandwright.dsl.quantity.QuantityFormat;
import bandwright.dsl.quantity.SizeSystem;
import bandwright.dsl.view.Table;

/** A finger's size in every system, side by side, and what to know before a ring is made to it. */
public final class SizeTable {
    /** From this width, in mm, bands are often made larger (Carey Pearson, Finding a ring size). */
    private static final double WIDE_MM = 5;

    private final List<List<String>> rows = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    private SizeTable() {}

    /** The bores of a ring's bands, with advice for this ring. */
    public static Table of(Ring ring) {
        SizeTable table = new SizeTable();
        Map<FingerSize, List<String>> bores = new LinkedHashMap<>();
        for (Band band : ring.design().bands()) {
            bores.computeIfAbsent(band.finger().bore(), bore -> new ArrayList<>())
                    .add(band.name());
        }
        bores.forEach((bore, bands) -> table.add(String.join(", ", bands), bore));
        ring.design().bands().forEach(table::advise);
        ring.design().stoneRows().stream().filter(row -> row.around().isFull()).forEach(table::fullRow);
        return table.table("band");
    }

    /** Finger sizes that a design defines, by their names. */
    public static Table of(Map<String, FingerSize> fingers) {
        SizeTable table = new SizeTable();
        fingers.forEach(table::add);
        return table.table("name");
    }

    private void add(String label, FingerSize size) {
        for (SizeSystem system : SizeSystem.values()) {
            FingerSize nearest = size.nearestStandard(system);
            rows.add(List.of(
                    label,
                    system.fullName(),
                    size.in(system).text(),
                    nearest.text(),
                    number(nearest.circumferenceMm() - size.circumferenceMm()),
                    system.standard()));
        }
        notes.add(Sentences.of(
                "size.is",
                label,
                size.text(),
                QuantityFormat.number(size.diameterMm(), 3),
                number(size.circumferenceMm())));
        for (RivalLetters rival : RivalLetters.near(size.circumferenceMm())) {
            notes.add(Sentences.of(
                    "size.rival", rival.source().text(), "UK " + rival.letter(), number(rival.circumferenceMm())));
        }
    }

    private void advise(Band band) {
        double width = band.stations().stream()
                .mapToDouble(station -> station.section().widthMm())
                .max()
                .orElse(0);
        boolean allowed = band.finger().bore().compareTo(band.finger().size()) != 0;
        if (width >= WIDE_MM) {
            notes.add(Sentences.of(allowed ? "size.wide.allowed" : "size.wide", band.name(), number(width)));
        }
        boolean curvedInside = band.stations().stream()
                .anyMatch(station -> station.section().form().endsWith("court"));
        if (curvedInside) {
            notes.add(Sentences.of("size.court", band.name()));
        }
    }

    private void fullRow(StoneRow row) {
        notes.add(Sentences.of("size.full-row", row.name()));
    }

    private Table table(String first) {
        SizeSystem.UK.caution().ifPresent(caution -> notes.add("UK: " + caution + "."));
        SizeSystem.JP.caution().ifPresent(caution -> notes.add("JP: " + caution + "."));
        SizeSystem.US.caution().ifPresent(caution -> notes.add("US: " + caution + "."));
        SizeSystem.DE.caution().ifPresent(caution -> notes.add("DE: " + caution + "."));
        notes.add(Sentences.of("size.knuckle"));
        notes.add(Sentences.of("size.gauge"));
        // What the polisher takes off the wall opens the bore by twice as much, and a circle by pi times that.
        double circumference = 2 * StrictMath.PI * 0.05;
        notes.add(Sentences.of(
                "size.polish",
                number(circumference),
                number(SizeSystem.US.number(circumference) - SizeSystem.US.number(0))));
        return new Table(
                "Finger size in every system",
                List.of(
                        Table.Column.words(first),
                        Table.Column.words("system"),
                        Table.Column.words("size"),
                        Table.Column.words("nearest standard size"),
                        Table.Column.numbers("larger by", "mm of circumference"),
                        Table.Column.words("by")),
                rows,
                notes);
    }

    private static String number(double value) {
        return QuantityFormat.number(value, 2);
    }
}
