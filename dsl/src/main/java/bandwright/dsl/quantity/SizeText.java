// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** How the number of a finger size is written; package-private, {@link FingerSize#text()} is the door. */
final class SizeText {
    private static final int LETTERS = 26;
    /** Closer than this to a quarter or half, a size is written as one: far below what any gauge tells apart. */
    private static final double SAME = 1e-9;

    private SizeText() {}

    static String number(SizeSystem system, double number) {
        return switch (system) {
            case UK -> letter(number);
            case US -> quarters(number);
            case ISO, JP, CH, DE -> decimal(number);
        };
    }

    /** At most three decimals, halves away from zero, no trailing zeros. */
    static String decimal(double value) {
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    private static String quarters(double number) {
        double quarters = number * 4;
        if (number < 0 || !isWhole(quarters)) {
            return decimal(number);
        }
        long count = Math.round(quarters);
        String whole = Long.toString(count / 4);
        String part = part((int) (count % 4));
        return part.isEmpty() ? whole : count < 4 ? part : whole + " " + part;
    }

    private static String part(int quarters) {
        return switch (quarters) {
            case 1 -> "1/4";
            case 2 -> "1/2";
            case 3 -> "3/4";
            default -> "";
        };
    }

    /** A letter, a half after it where it fits, else the rest as an addition the language can read back. */
    private static String letter(double number) {
        if (!Double.isFinite(number)) {
            return Double.toString(number);
        }
        double halves = number * 2;
        double exact = isWhole(halves) ? Math.round(halves) / 2.0 : number;
        // A size between two letters counts from the lower one; below A there is none, so A it is.
        double base = Math.max(1, Math.floor(exact));
        String name =
                base <= LETTERS ? Character.toString((char) ('A' + (int) base - 1)) : "Z+" + decimal(base - LETTERS);
        double rest = exact - base;
        if (rest == 0) {
            return name;
        }
        if (rest == 0.5) {
            return name + " 1/2";
        }
        return rest < 0 ? name + " - " + decimal(-rest) : name + " + " + decimal(rest);
    }

    private static boolean isWhole(double value) {
        return Math.abs(value - Math.rint(value)) <= SAME * Math.max(1, Math.abs(value));
    }
}
