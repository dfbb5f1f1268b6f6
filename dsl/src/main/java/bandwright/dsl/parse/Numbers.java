// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.parse;

import java.math.BigDecimal;
import java.math.BigInteger;

import org.jspecify.annotations.Nullable;

/** Numbers as they are written: {@code 5}, {@code 1.25}, {@code 1/4}, {@code 7 1/2}. */
final class Numbers {
    private Numbers() {}

    /** With plain fractions and single spaces. */
    static String plain(String text) {
        return Spelling.plain(text);
    }

    /** The nearest double; not a number for a fraction of zero parts, infinite where it is too large. */
    static double value(String text) {
        String fraction = fraction(text);
        if (fraction == null) {
            return new BigDecimal(text).doubleValue();
        }
        String[] parts = fraction.split("/", -1);
        if (parts.length != 2) {
            return new BigDecimal(fraction).doubleValue();
        }
        BigInteger below = new BigInteger(parts[1]);
        BigInteger above = new BigInteger(whole(text)).multiply(below).add(new BigInteger(parts[0]));
        return below.signum() == 0 ? Double.NaN : above.doubleValue() / below.doubleValue();
    }

    /** The number without its fraction; 0 where there is only a fraction. */
    static String whole(String text) {
        int space = text.indexOf(' ');
        return space >= 0 ? text.substring(0, space) : text.indexOf('/') >= 0 ? "0" : text;
    }

    static @Nullable String fraction(String text) {
        int space = text.indexOf(' ');
        return text.indexOf('/') < 0 ? null : text.substring(space + 1);
    }
}
