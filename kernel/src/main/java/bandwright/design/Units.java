// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.design;

import bandwright.dsl.quantity.SizeSystem;
import bandwright.dsl.quantity.Unit;

/** Values with units, for Java: {@code mm(5)}, {@code us(7.25)}. The units are those of the language. */
public final class Units {
    private Units() {}

    public static Quantity mm(double count) {
        return quantity(count, "mm");
    }

    public static Quantity cm(double count) {
        return quantity(count, "cm");
    }

    /** Inches, 25.4 mm each. */
    public static Quantity inch(double count) {
        return quantity(count, "inch");
    }

    /** Thousandths of a millimetre. */
    public static Quantity um(double count) {
        return quantity(count, "um");
    }

    /** Degrees of an angle. */
    public static Quantity deg(double count) {
        return quantity(count, "deg");
    }

    public static Quantity g(double count) {
        return quantity(count, "g");
    }

    public static Quantity kg(double count) {
        return quantity(count, "kg");
    }

    /** Pennyweights. */
    public static Quantity dwt(double count) {
        return quantity(count, "dwt");
    }

    /** Troy ounces. */
    public static Quantity ozt(double count) {
        return quantity(count, "ozt");
    }

    /** Metric carats, 0.2 g each. */
    public static Quantity ct(double count) {
        return quantity(count, "ct");
    }

    /** Hundredths of a carat. */
    public static Quantity pt(double count) {
        return quantity(count, "pt");
    }

    /** A share: {@code percent(10)} is the plain number 0.1. */
    public static Quantity percent(double count) {
        return quantity(count, "%");
    }

    /** A plain number. */
    public static Quantity number(double value) {
        return Quantity.of(bandwright.dsl.quantity.Quantity.number(value));
    }

    /**
     * So many of any unit the language knows: {@code quantity(41, "EUR/g")}, {@code quantity(14.7, "g/cm^3")}.
     *
     * @throws DesignException if it knows no such unit
     */
    public static Quantity quantity(double count, String unit) {
        return Quantity.of(count, unit(unit));
    }

    static Unit unit(String symbol) {
        return Unit.parse(symbol)
                .orElseThrow(() -> new DesignException(
                        "unknown-unit", symbol + " is no unit; these are: " + String.join(", ", Unit.symbols())));
    }

    /** A size of the United States: {@code us(7.25)}. */
    public static Size us(double number) {
        return Size.of(SizeSystem.US, number);
    }

    /** A size of the United Kingdom: {@code uk("N 1/2")}. */
    public static Size uk(String letter) {
        return Size.read(SizeSystem.UK, letter);
    }

    /** The inner circumference in mm. */
    public static Size iso(double number) {
        return Size.of(SizeSystem.ISO, number);
    }

    /** A size of the Japanese trade. */
    public static Size jp(double number) {
        return Size.of(SizeSystem.JP, number);
    }

    /** The inner circumference in mm, less 40. */
    public static Size ch(double number) {
        return Size.of(SizeSystem.CH, number);
    }

    /** The inner diameter in mm. */
    public static Size de(double number) {
        return Size.of(SizeSystem.DE, number);
    }
}
