// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.design;

import java.math.BigDecimal;
import java.math.MathContext;

import bandwright.dsl.quantity.FingerSize;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.Unit;

/** Values as ring text from which they can be read back exactly. */
final class Literals {
    private static final int MOST_DIGITS = 17;

    private Literals() {}

    static String of(Quantity quantity) {
        Unit shown = quantity.shown();
        if (shown != null && !shown.symbol().isEmpty()) {
            double count = quantity.count(shown);
            if (count * shown.factor() == quantity.value()) {
                return written(count, shown);
            }
        }
        Unit unit = Unit.shownFor(quantity.dimension());
        return written(quantity.count(unit), unit);
    }

    private static String written(double count, Unit unit) {
        if (unit.symbol().isEmpty()) {
            return number(count);
        } else if (Unit.parse(unit.symbol()).isEmpty()) {
            throw new DesignException("no-unit", "the language cannot write a value in " + unit.symbol());
        }
        return number(count) + " " + unit.symbol();
    }

    /** The nearest size that is made, and what is left to it. */
    static String of(FingerSize size) {
        FingerSize near = size.nearestStandard(size.system());
        double rest = size.number() - near.number();
        if (rest == 0 || near.problem().isPresent()) {
            return size.text();
        }
        return near.text() + (rest < 0 ? " - " : " + ") + number(Math.abs(rest));
    }

    /** The shortest decimal that is nearer to this number than to any other. How Java prints a double differs between releases. */
    static String number(double value) {
        if (!Double.isFinite(value)) {
            throw new DesignException("no-value", "this is beyond all numbers: " + value);
        }
        BigDecimal exact = new BigDecimal(value);
        for (int digits = 1; digits < MOST_DIGITS; digits++) {
            BigDecimal rounded = exact.round(new MathContext(digits));
            if (rounded.doubleValue() == value) {
                return plain(rounded);
            }
        }
        return plain(exact.round(new MathContext(MOST_DIGITS)));
    }

    private static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }
}
