// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve;

import java.util.OptionalDouble;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.model.Prongs;
import bandwright.dsl.quantity.Dimension;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.syntax.Block;
import bandwright.dsl.syntax.ProngsProperty;
import bandwright.dsl.syntax.Property;

/** Pins between the stones of a row. */
final class ProngsReader extends Reader {
    private final bandwright.dsl.syntax.Prongs prongs;
    private final Block<ProngsProperty> block;

    ProngsReader(Resolution design, Entry entry) {
        super(design, entry);
        this.prongs = (bandwright.dsl.syntax.Prongs) entry.statement();
        this.block = prongs.block();
    }

    Prongs prongs() {
        faults.attempt(() -> names.row(prongs.row(), source));
        faults.attempt(() -> names.part(prongs.part(), source));
        double diameter = required(block, Property.Word.DIAMETER, Sign.POSITIVE, "diameter 0.55 mm");
        double rise = required(block, Property.Word.RISE, Sign.POSITIVE, "rise 0.28 mm");
        OptionalDouble root = optional(block, Property.Word.ROOT, Sign.POSITIVE);
        int perGap = perGap();
        OptionalDouble across = optional(block, Property.Word.ACROSS, perGap == 2 ? Sign.POSITIVE : Sign.NOT_NEGATIVE);
        OptionalDouble reach = optional(block, Property.Word.REACH, Sign.POSITIVE);
        checkAcross(perGap);
        OptionalDouble setHeight = optional(block, Property.Word.SET_HEIGHT, Sign.POSITIVE);
        faults.raise();
        return new Prongs(
                name(),
                entry.place(),
                prongs.row().text(),
                prongs.part().text(),
                diameter,
                rise,
                root,
                across,
                reach,
                perGap,
                setHeight);
    }

    private void checkAcross(int perGap) {
        Property.Amount across = block.amount(Property.Word.ACROSS);
        Property.Amount reach = block.amount(Property.Word.REACH);
        if (across != null && reach != null) {
            oneOnly(across, reach);
        } else if (across == null && reach == null && perGap == 2) {
            missing("across or reach", "across 0.42 mm");
        }
    }

    private int perGap() {
        Property.Amount perGap = block.amount(Property.Word.PER_GAP);
        if (perGap == null) {
            return 2;
        }
        double pins = amount("per-gap", perGap.value(), Dimension.NUMBER, Sign.POSITIVE);
        if (pins > 0 && pins != 1 && pins != 2) {
            faults.add(Diagnostic.error("pins-per-gap", place(perGap.value()))
                    .with(Quantity.number(pins).toString()));
        }
        return (int) pins;
    }
}
