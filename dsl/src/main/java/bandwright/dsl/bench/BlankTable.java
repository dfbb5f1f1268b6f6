// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.bench;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.construct.Ring;
import bandwright.dsl.material.PlainBand;
import bandwright.dsl.model.Band;
import bandwright.dsl.quantity.QuantityFormat;
import bandwright.dsl.view.Table;

/** The strips from which plain rings of these sizes are bent. */
public final class BlankTable {
    private BlankTable() {}

    public static Table of(Ring ring) {
        List<List<String>> rows = new ArrayList<>();
        for (Band band : ring.design().bands()) {
            PlainBand strip = strip(band);
            rows.add(List.of(
                    band.name(),
                    number(strip.blankLengthMm()),
                    number(strip.widthMm()),
                    number(strip.thicknessMm()),
                    number(strip.grams(band.metal().densityGPerCm3()))));
        }
        return new Table(
                "Blank of a plain ring",
                List.of(
                        Table.Column.words("band"),
                        Table.Column.numbers("length", "mm"),
                        Table.Column.numbers("width", "mm"),
                        Table.Column.numbers("thickness", "mm"),
                        Table.Column.numbers("weight", "g")),
                rows,
                List.of(Sentences.of("blank.length"), Sentences.of("blank.wide"), Sentences.of("blank.allowance")));
    }

    /** A band that changes on its way round is forged or filed from a strip that holds its largest place. */
    static PlainBand strip(Band band) {
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
