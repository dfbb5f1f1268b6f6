// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.display;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;

/** Numbers as decimals, rounded halves away from zero, never with an exponent. */
public final class Decimals {
    /** Fewer digits than a double holds: the noise of binary fractions must not decide which way a half is rounded. */
    private static final MathContext SIGNIFICANT = new MathContext(14, RoundingMode.HALF_UP);

    private Decimals() {}

    /** As many places as told, zeros included, so that columns line up; a number that is none shows as {@code ?}. */
    public static String fixed(double value, int places) {
        return rounded(value, places).map(BigDecimal::toPlainString).orElse("?");
    }

    /** At most so many places, without zeros at the end; a number that is none shows as {@code ?}. */
    public static String plain(double value, int places) {
        return trimmed(value, places).map(BigDecimal::toPlainString).orElse("?");
    }

    /** At most so many places, without zeros at the end; empty if the number is infinite or none. */
    public static Optional<BigDecimal> trimmed(double value, int places) {
        return rounded(value, places).map(BigDecimal::stripTrailingZeros);
    }

    // Through the exact value: how a double prints differs between releases of Java.
    private static Optional<BigDecimal> rounded(double value, int places) {
        return Double.isFinite(value)
                ? Optional.of(new BigDecimal(value).round(SIGNIFICANT).setScale(places, RoundingMode.HALF_UP))
                : Optional.empty();
    }
}
