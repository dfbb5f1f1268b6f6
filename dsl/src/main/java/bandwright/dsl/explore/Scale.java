// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explore;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

import bandwright.dsl.quantity.FingerSize;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.resolve.expression.Value;

/**
 * The line of numbers that a definition moves on: quantities in base units, finger sizes in the steps of their system.
 *
 * @param sample any value on it; tells the kind, the unit it is shown in, the system
 */
record Scale(Value sample) {
    /** Fewer digits than a double holds: 3 mm and seven steps of 0.1 mm are 3.7 mm, as a person would write it. */
    private static final MathContext SIGNIFICANT = new MathContext(14, RoundingMode.HALF_UP);

    /** Shares of a range's length that are steps enough for a handle without a step of its own. */
    private static final double FINE = 500;

    /** Whether values of that kind lie on a line at all: a metal or a truth does not. */
    static boolean has(Value value) {
        return value instanceof Value.Amount || value instanceof Value.Size;
    }

    /** Whether a value lies on this line. */
    boolean fits(Value value) {
        if (sample instanceof Value.Amount amount && value instanceof Value.Amount other) {
            return amount.quantity().fits(other.quantity());
        }
        return sample instanceof Value.Size && value instanceof Value.Size;
    }

    /** The number of a value that {@link #fits}; a size of another system is put into this one's. */
    double number(Value value) {
        if (value instanceof Value.Amount amount) {
            return amount.quantity().value();
        } else if (value instanceof Value.Size size && sample instanceof Value.Size own) {
            return size.size().in(own.size().system()).number();
        }
        throw new IllegalArgumentException(value.kind() + " is on no scale of " + sample.kind());
    }

    Value value(double number) {
        double rounded = new BigDecimal(number).round(SIGNIFICANT).doubleValue();
        if (sample instanceof Value.Amount amount) {
            Quantity quantity = amount.quantity();
            return new Value.Amount(new Quantity(rounded, quantity.dimension(), quantity.shown()));
        } else if (sample instanceof Value.Size size) {
            return new Value.Size(new FingerSize(size.size().system(), rounded));
        }
        throw new IllegalArgumentException(sample.kind() + " has no scale");
    }

    /** Whether a value can be a step on this line: a size moves by plain numbers. */
    boolean fitsStep(Value step) {
        return sample instanceof Value.Size
                ? step instanceof Value.Amount amount
                        && amount.quantity().dimension().isNumber()
                : fits(step);
    }

    /** What a step must be, in words. */
    String stepWords() {
        return sample instanceof Value.Size ? "a plain number" : sample.kind();
    }

    /** The number of a step that {@link #fitsStep}. */
    static double step(Value step) {
        return ((Value.Amount) step).quantity().value();
    }

    /** A step for who named none: as a size system makes its sizes, else 1, 2 or 5 of a decimal place, some 500 in the range. */
    double fineStep(double length) {
        if (sample instanceof Value.Size size) {
            return size.size().system().standardStep();
        }
        double place = StrictMath.pow(10, Math.floor(StrictMath.log10(length / FINE)));
        double mantissa = length / FINE / place;
        double step = mantissa >= 5 ? 5 : mantissa >= 2 ? 2 : 1;
        return new BigDecimal(step * place).round(SIGNIFICANT).doubleValue();
    }
}
