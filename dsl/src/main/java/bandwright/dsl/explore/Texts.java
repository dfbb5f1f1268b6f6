// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explore;

import java.util.Locale;
import java.util.Optional;

import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.QuantityFormat;
import bandwright.dsl.resolve.expression.Value;

/** How numbers and differences read. */
final class Texts {
    private Texts() {}

    /** A count with its thousands set apart: {@code 10,000}. */
    static String count(double count) {
        return String.format(Locale.ROOT, "%,.0f", count);
    }

    /** {@code 1 variant}, {@code 12 variants}. */
    static String counted(int count, String thing) {
        return count(count) + " " + thing + (count == 1 ? "" : "s");
    }

    static String text(Optional<Value> value) {
        return value.map(Value::text).orElse("");
    }

    /** How much more the second is, with its sign: {@code +0.9 mm}; empty text where that means nothing. */
    static String difference(Optional<Value> before, Optional<Value> after) {
        if (before.orElse(null) instanceof Value.Amount a
                && after.orElse(null) instanceof Value.Amount b
                && a.quantity().fits(b.quantity())) {
            return signed(b.quantity().minus(a.quantity()), a.quantity());
        } else if (before.orElse(null) instanceof Value.Size a
                && after.orElse(null) instanceof Value.Size b
                && a.size().system() == b.size().system()) {
            return plus(QuantityFormat.number(b.size().minus(a.size()), 3));
        }
        return "";
    }

    private static String signed(Quantity difference, Quantity like) {
        // A difference that is only the noise of rounding is none.
        boolean none = Math.abs(difference.value()) <= Quantity.EQUAL_WITHIN * Math.abs(like.value());
        Quantity told = new Quantity(none ? 0 : difference.value(), difference.dimension(), like.shown());
        return plus(QuantityFormat.format(told));
    }

    /** The share of the first by which the second is more: {@code +7.1 %}; empty text where that means nothing. */
    static String percent(Optional<Value> before, Optional<Value> after) {
        if (before.orElse(null) instanceof Value.Amount a
                && after.orElse(null) instanceof Value.Amount b
                && a.quantity().fits(b.quantity())
                && Math.abs(a.quantity().value()) > 0) {
            double share = 100
                    * (b.quantity().value() - a.quantity().value())
                    / Math.abs(a.quantity().value());
            return plus(QuantityFormat.number(Math.abs(share) < 1e-7 ? 0 : share, 1) + " %");
        }
        return "";
    }

    private static String plus(String number) {
        return number.startsWith("-") || number.equals("0") || number.startsWith("0 ") ? number : "+" + number;
    }
}
