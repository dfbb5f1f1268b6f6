// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.bench;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.construct.PartSection;
import bandwright.dsl.construct.Ring;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.material.Metal;
import bandwright.dsl.material.PlainBand;
import bandwright.dsl.model.Band;
import bandwright.dsl.model.Groove;
import bandwright.dsl.model.Prongs;
import bandwright.dsl.model.Seats;
import bandwright.dsl.model.Section;
import bandwright.dsl.model.StoneRow;
import bandwright.dsl.quantity.QuantityFormat;
import bandwright.dsl.view.Table;

/**
 * The strips that a ring's bands, and the rings kept in their grooves, are bent from; and, below, in what the design is more than a plain strip bent
 * round.
 */
public final class BlankTable {
    /** Wider bands want a longer strip: Rio Grande, Measuring a ring blank. */
    private static final double WIDE_MM = 4;

    private static final double WIDE_EXTRA_MM = 0.5;

    /** A section that fills so much of its rectangle is a strip with its edges broken. */
    private static final double RECTANGULAR = 0.98;

    private final Ring ring;
    private final List<List<String>> rows = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    private BlankTable(Ring ring) {
        this.ring = ring;
    }

    public static Table of(Ring ring) {
        BlankTable blank = new BlankTable(ring);
        blank.bands();
        blank.kept();
        blank.pieces();
        if (!blank.rows.isEmpty()) {
            blank.pins();
            blank.stones();
        }
        List<String> notes = new ArrayList<>();
        if (!blank.rows.isEmpty()) {
            notes.addAll(
                    List.of(Sentences.of("blank.length"), Sentences.of("blank.wide"), Sentences.of("blank.allowance")));
        }
        notes.addAll(blank.notes);
        return new Table(
                "Strips to bend a ring from",
                List.of(
                        Table.Column.words("part"),
                        Table.Column.words("metal"),
                        Table.Column.numbers("length", "mm"),
                        Table.Column.numbers("to saw", "mm"),
                        Table.Column.numbers("width", "mm"),
                        Table.Column.numbers("thickness", "mm"),
                        Table.Column.numbers("weight", "g"),
                        Table.Column.numbers("or of profiled wire", "mm")),
                blank.rows,
                notes);
    }

    private void bands() {
        for (Band band : ring.design().bands()) {
            if (RawParts.isTurned(band.metal())) {
                notes.add(Sentences.of("blank.turned", band.name(), band.metal().name()));
                continue;
            }
            boolean even = band.stations().size() == 1;
            row(band.name(), band.metal(), strip(band), even ? wire(band) : "");
            if (band.stations().size() > 1) {
                notes.add(Sentences.of("blank.changes", band.name()));
            } else if (filled(band) < RECTANGULAR) {
                notes.add(Sentences.of("blank.form", band.name(), QuantityFormat.number(100 * filled(band), 1) + " %"));
            }
        }
        List<String> cuts = new ArrayList<>();
        ring.design().grooves().stream().map(Groove::name).forEach(cuts::add);
        ring.design().seats().stream().map(Seats::name).forEach(cuts::add);
        if (!cuts.isEmpty() && !rows.isEmpty()) {
            notes.add(Sentences.of("blank.cut", String.join(", ", cuts)));
        }
    }

    /** Kept rings are bent by themselves; what changes or goes round only in part is not. */
    private void kept() {
        List<String> other = new ArrayList<>();
        List<String> poured = new ArrayList<>();
        for (Groove groove : ring.design().grooves()) {
            String part = groove.keep().map(Groove.Keep::part).orElse("");
            if (groove.isPoured()) {
                poured.add(part);
            } else if (!part.isEmpty() && !ring(groove, part)) {
                other.add(part);
            }
        }
        if (!poured.isEmpty()) {
            notes.add(Sentences.of("blank.poured", String.join(", ", poured)));
        }
        if (!other.isEmpty()) {
            notes.add(Sentences.of("blank.arc", String.join(", ", other)));
        }
    }

    /** Collars and what a cut right through leaves: parted off the band, or bent by themselves. */
    private void pieces() {
        List<String> pieces = new ArrayList<>();
        for (Groove groove : ring.design().grooves()) {
            for (String piece : BenchParts.parted(groove)) {
                if (ring(groove, piece)
                        && !RawParts.isTurned(ring.section(piece).metal())) {
                    pieces.add(piece);
                }
            }
        }
        if (!pieces.isEmpty()) {
            notes.add(Sentences.of("blank.pieces", String.join(", ", pieces)));
        }
    }

    /** Tells the strip of a part that is a ring of one section; false if it is none. */
    private boolean ring(Groove groove, String name) {
        PartSection part = ring.section(name);
        if (!groove.around().isFull() || part.band().stations().size() > 1) {
            return false;
        }
        if (RawParts.isTurned(part.metal())) {
            notes.add(Sentences.of("blank.turned", name, part.metal().name()));
        } else {
            Bounds bounds = ring.bounds(name);
            row(name, part.metal(), new PlainBand(2 * bounds.minY(), bounds.height(), bounds.width()), wire(part));
        }
        return true;
    }

    /** Wire that has the part's section already bends about the middle of its metal, so by the rule of Pappus it holds as much as the ring. */
    private static String wire(PartSection part) {
        return part.isTurned()
                ? number(2 * StrictMath.PI * part.region().moments().centroid().y())
                : "";
    }

    /** Before grooves are cut. */
    private static String wire(Band band) {
        double up =
                band.stations().get(0).section().outline().moments().centroid().y();
        return number(2 * StrictMath.PI * (band.finger().innerRadiusMm() + up));
    }

    private void pins() {
        List<String> pins = BenchParts.pins(ring).stream().map(Prongs::name).toList();
        if (!pins.isEmpty()) {
            notes.add(Sentences.of("blank.pins", String.join(", ", pins)));
        }
    }

    private void stones() {
        List<String> rows =
                ring.design().stoneRows().stream().map(StoneRow::name).toList();
        if (!rows.isEmpty()) {
            notes.add(Sentences.of("blank.stones", String.join(", ", rows)));
        }
    }

    private void row(String part, Metal metal, PlainBand strip, String wire) {
        double extra = strip.widthMm() > WIDE_MM ? WIDE_EXTRA_MM : 0;
        rows.add(List.of(
                part,
                metal.name(),
                number(strip.blankLengthMm()),
                number(strip.blankLengthMm() + extra),
                number(strip.widthMm()),
                number(strip.thicknessMm()),
                number(strip.grams(metal.densityGPerCm3())),
                wire));
    }

    /** How much of the rectangle round it a band's section fills. */
    private static double filled(Band band) {
        Section section = band.stations().get(0).section();
        return section.outline().moments().area() / (section.widthMm() * section.heightMm());
    }

    /** A band that changes on its way round is forged or filed from a strip that holds its largest place. */
    private static PlainBand strip(Band band) {
        double thickness = 0;
        double width = 0;
        for (Band.Station station : band.stations()) {
            thickness = Math.max(thickness, station.section().heightMm());
            width = Math.max(width, station.section().widthMm());
        }
        return new PlainBand(2 * band.finger().innerRadiusMm(), thickness, width);
    }

    private static String number(double value) {
        return QuantityFormat.number(value, 3);
    }
}
