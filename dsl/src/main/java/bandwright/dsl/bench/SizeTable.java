// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import bandwright.dsl.check.Limit;
import bandwright.dsl.check.LimitTable;
import bandwright.dsl.construct.Ring;
import bandwright.dsl.material.RivalLetters;
import bandwright.dsl.model.Band;
import bandwright.dsl.model.Finger;
import bandwright.dsl.model.OwnLimit;
import bandwright.dsl.model.StoneRow;
import bandwright.dsl.quantity.FingerSize;
import bandwright.dsl.quantity.QuantityFormat;
import bandwright.dsl.quantity.SizeSystem;
import bandwright.dsl.view.Table;

/** A finger's size in every system, side by side, and what to know before a ring is made to it. */
public final class SizeTable {
    /** A quarter from this width on, mm, and half a size from the next (common practice, no source). */
    private static final double PRACTICE_MM = 6;

    private static final double PRACTICE_WIDER_MM = 8;

    /** Only from this width on does a band feel tight (Tender Essentials, FAQ), mm. */
    private static final double TIGHT_MM = 10;

    private static final double SAME = 1e-6;

    /** Written in steps alone, so that what lies between two is told by both. */
    private static final Set<SizeSystem> IN_STEPS = Set.of(SizeSystem.US, SizeSystem.UK, SizeSystem.JP);

    private final List<List<String>> rows = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    private final LimitTable limits;

    private SizeTable(LimitTable limits) {
        this.limits = limits;
    }

    /**
     * The bores of a ring's bands, with advice for this ring.
     *
     * @param own the user's limits: a rule of the user's own for wide bands is the one to make it by
     */
    public static Table of(Ring ring, List<OwnLimit> own) {
        SizeTable table = new SizeTable(LimitTable.BUILT_IN.with(own));
        Map<FingerSize, List<String>> bores = new LinkedHashMap<>();
        for (Band band : ring.design().bands()) {
            bores.computeIfAbsent(band.finger().bore(), bore -> new ArrayList<>())
                    .add(band.name());
        }
        // What to do comes before what to know.
        ring.design().bands().forEach(table::advise);
        bores.forEach((bore, bands) -> table.add(String.join(", ", bands), bore));
        ring.design().bands().stream()
                .filter(band -> RawParts.isTurned(band.metal()))
                .forEach(band -> table.notes.add(
                        Sentences.of("size.turned", band.name(), band.metal().name())));
        ring.design().stoneRows().stream().filter(row -> row.around().isFull()).forEach(table::fullRow);
        return table.table("band");
    }

    /** Finger sizes that a design defines, by their names. */
    public static Table of(Map<String, FingerSize> fingers) {
        SizeTable table = new SizeTable(LimitTable.BUILT_IN);
        fingers.forEach(table::add);
        return table.table("name");
    }

    private void add(String label, FingerSize size) {
        for (SizeSystem system : SizeSystem.values()) {
            FingerSize nearest = size.nearestStandard(system);
            rows.add(List.of(
                    label,
                    system.fullName(),
                    written(size, system),
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
        notes.add(Sentences.of("size.uk", size.nearestStandard(SizeSystem.UK).text(), number(size.circumferenceMm())));
        for (RivalLetters rival : RivalLetters.near(size.circumferenceMm())) {
            notes.add(Sentences.of(
                    "size.rival", rival.source().text(), "UK " + rival.letter(), number(rival.circumferenceMm())));
        }
    }

    /** What to make it to, by the rule that {@code show checks} holds it against, and then the rules that say otherwise. */
    private void advise(Band band) {
        String name = band.name();
        double width = width(band);
        double allowed = allowed(band.finger());
        FingerSize finger = band.finger().size();
        Limit wide = limits.get("wide-band");
        Limit allowance = limits.get("wide-band-allowance");
        double larger = allowance.value().value();
        double rule = width < wide.value().value() ? 0 : larger;
        boolean own = wide.own() != null || allowance.own() != null;
        String told = own
                ? Sentences.of("size.rule.own", wide.value().toString(), number(larger))
                : Sentences.of("size.rule." + (rule > 0));
        String key = Math.abs(allowed - rule) < SAME ? "keep" : allowed < rule ? "larger" : "smaller";
        String made = Math.abs(allowed) < SAME ? "as-measured" : allowed > 0 ? "made-larger" : "made-smaller";
        notes.add(Sentences.of("size.verdict", name, number(width), told)
                + Sentences.of("size.verdict." + made, finger.text(), number(Math.abs(allowed)))
                + Sentences.of(
                        "size.verdict." + key,
                        finger.text(),
                        larger == 0.5 ? "1/2" : QuantityFormat.number(larger, 4)));
        if (own) {
            notes.add(Sentences.of("size.rule.replaced", Sentences.of("size.rule.true")));
        }
        double practice = width < PRACTICE_MM ? 0 : width < PRACTICE_WIDER_MM ? 0.25 : 0.5;
        if (practice != rule) {
            notes.add(Sentences.of("size.rule.practice", larger(practice)));
        }
        boolean curvedInside = band.stations().stream()
                .anyMatch(station -> station.section().form().endsWith("court"));
        if (rule > 0 && (curvedInside || width < TIGHT_MM)) {
            notes.add(Sentences.of("size.rule.tight"));
        }
        if (curvedInside) {
            notes.add(Sentences.of("size.court", name));
        }
    }

    private static double width(Band band) {
        return band.stations().stream()
                .mapToDouble(station -> station.section().widthMm())
                .max()
                .orElse(0);
    }

    /** By how many US sizes a ring is made larger than its finger. */
    private static double allowed(Finger finger) {
        double step = SizeSystem.US.circumferenceMm(1) - SizeSystem.US.circumferenceMm(0);
        return (finger.bore().circumferenceMm() - finger.size().circumferenceMm()) / step;
    }

    private static String larger(double sizes) {
        return Sentences.of("size.larger." + number(sizes));
    }

    /** As it is written; in a system that has steps only, what lies between two of them by both. */
    private static String written(FingerSize size, SizeSystem system) {
        FingerSize exact = size.in(system);
        double steps = exact.number() / system.standardStep();
        double whole = Math.floor(steps + SAME);
        if (system == size.system() || !IN_STEPS.contains(system) || steps - whole < SAME) {
            return exact.text();
        }
        FingerSize below = new FingerSize(system, whole * system.standardStep());
        FingerSize above = below.plus(system.standardStep());
        return Sentences.of(
                "size.between",
                below.text(),
                above.text().substring(system.word().length() + 1));
    }

    private void fullRow(StoneRow row) {
        notes.add(Sentences.of("size.full-row", row.name()));
    }

    private Table table(String first) {
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
