// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.bench;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.construct.Ring;
import bandwright.dsl.construct.StoneLayout;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.model.Band;
import bandwright.dsl.model.Groove;
import bandwright.dsl.model.Seats;
import bandwright.dsl.model.StoneRow;
import bandwright.dsl.quantity.QuantityFormat;
import bandwright.dsl.view.Table;

/** Where letters can stand inside a band: how far round, and how wide, beside the holes of its stones. */
public final class Engraving {
    /** A wall that leaves the finger by more than this, in mm, is no ground for letters: common practice, no source. */
    private static final double CURVED_MM = 0.2;

    /** Kept free at each edge and beside holes, mm: common practice, no source. */
    private static final double MARGIN_MM = 0.4;

    private static final double FINE_MM = 0.01;

    /** A letter and the space after it, as a share of its height: from memory, of upright letters without serifs. */
    private static final double PITCH = 0.85;

    private final Ring ring;
    private final List<List<String>> rows = new ArrayList<>();

    private Engraving(Ring ring) {
        this.ring = ring;
    }

    public static Table of(Ring ring) {
        Engraving engraving = new Engraving(ring);
        ring.design().bands().forEach(engraving::band);
        return new Table(
                "Room for engraving inside",
                List.of(
                        Table.Column.words("band"),
                        Table.Column.words("where"),
                        Table.Column.numbers("round", "mm"),
                        Table.Column.numbers("height of letters", "mm"),
                        Table.Column.numbers("letters", "")),
                engraving.rows,
                List.of(Sentences.of("engraving.note")));
    }

    private void band(Band band) {
        if (isOpen(band)) {
            rows.add(List.of(
                    band.name(), "not worked out: a channel, a groove or a joint may open the inside", "", "", ""));
            return;
        }
        double least = Double.NEGATIVE_INFINITY;
        double most = Double.POSITIVE_INFINITY;
        for (Band.Station station : band.stations()) {
            double from = Double.POSITIVE_INFINITY;
            double to = Double.NEGATIVE_INFINITY;
            for (Point point : station.section().outline().flattened(FINE_MM)) {
                if (point.y() <= CURVED_MM) {
                    from = Math.min(from, point.x());
                    to = Math.max(to, point.x());
                }
            }
            least = Math.max(least, from);
            most = Math.min(most, to);
        }
        double holesFrom = Double.POSITIVE_INFINITY;
        double holesTo = Double.NEGATIVE_INFINITY;
        for (Seats seats : ring.design().seats()) {
            double half = seats.holeMm() / 2 + seats.deburrMm();
            for (StoneRow row : ring.design().stoneRows()) {
                if (row.name().equals(seats.row()) && half > 0 && isOn(row, band)) {
                    for (StoneLayout.Line line : ring.layout(row.name()).lines()) {
                        // A hole leans with its stone, so it comes out elsewhere than the stone stands, and longer.
                        double way = (line.girdleRadius() - band.finger().innerRadiusMm()) / line.axisOut();
                        double across = line.across() - way * line.axisAcross();
                        holesFrom = Math.min(holesFrom, across - half / line.axisOut());
                        holesTo = Math.max(holesTo, across + half / line.axisOut());
                    }
                }
            }
        }
        double round = 2 * StrictMath.PI * band.finger().innerRadiusMm();
        if (holesFrom > holesTo) {
            row(band, "all of it", round, most - least);
        } else {
            row(band, "beside the holes, to the fingertip", round, most - holesTo);
            row(band, "beside the holes, to the hand", round, holesFrom - least);
        }
    }

    /** Whether more than holes may break the inner wall. */
    private boolean isOpen(Band band) {
        boolean slotted = ring.design().seats().stream()
                .anyMatch(seats -> seats.channel().isPresent()
                        && ring.design().stoneRows().stream()
                                .anyMatch(row -> row.name().equals(seats.row()) && isOn(row, band)));
        boolean inside = ring.design().grooves().stream().anyMatch(Groove::inside);
        boolean parted =
                ring.sections().stream().noneMatch(section -> section.name().equals(band.name()));
        return slotted || inside || parted;
    }

    private boolean isOn(StoneRow row, Band band) {
        return ring.section(row.part()).band().name().equals(band.name());
    }

    private void row(Band band, String where, double round, double wide) {
        double height = Math.min(wide - 2 * MARGIN_MM, LARGEST_MM);
        boolean any = height >= SMALLEST_MM;
        rows.add(List.of(
                band.name(),
                where,
                QuantityFormat.number(round, 1),
                any ? QuantityFormat.number(Math.floor(height * 10 + 1e-9) / 10, 1) : "no room",
                any ? Integer.toString((int) Math.floor(round / (PITCH * height))) : ""));
    }

    /** Letters inside rings are seldom larger, and cannot be read if smaller: common practice, no source. */
    private static final double LARGEST_MM = 2;

    private static final double SMALLEST_MM = 0.8;
}
