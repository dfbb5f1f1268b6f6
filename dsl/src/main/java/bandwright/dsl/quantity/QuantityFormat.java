// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** How values are shown: {@code 42 mm}, {@code 14.76 g/cm^3}, {@code 0.25 ct}, {@code 41.5 EUR/g}. */
public final class QuantityFormat {
    private static final int DECIMALS = 3;
    private static final int MONEY_DECIMALS = 2;
    /** Fewer digits than a double holds: the noise of binary fractions must not decide which way a half is rounded. */
    private static final MathContext SIGNIFICANT = new MathContext(14, RoundingMode.HALF_UP);

    private QuantityFormat() {}

    /** The value in the unit it is shown in. */
    public static String format(Quantity quantity) {
        Unit asked = quantity.shown();
        Unit unit = asked != null ? asked : Unit.shownFor(quantity.dimension());
        int decimals = quantity.dimension().money() == 0 ? DECIMALS : MONEY_DECIMALS;
        String number = number(quantity.value() / unit.factor(), decimals);
        return unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
    }

    /** At most so many decimals, halves away from zero, trailing zeros dropped. */
    public static String number(double value, int decimals) {
        if (!Double.isFinite(value)) {
            return Double.isNaN(value) ? "undefined" : value > 0 ? "infinite" : "-infinite";
        }
        BigDecimal rounded = new BigDecimal(value).round(SIGNIFICANT).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
