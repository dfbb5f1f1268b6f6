// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.quantity;

import org.jspecify.annotations.Nullable;

/**
 * What kind of quantity: a product of powers of a length, a mass, an angle and money. The currency is part of the kind,
 * so that two currencies never mix.
 *
 * @param currency three capital letters, present if and only if {@code money} is not 0
 */
public record Dimension(
        int length,
        int mass,
        int angle,
        int money,
        @Nullable String currency) {
    public static final Dimension NUMBER = new Dimension(0, 0, 0, 0, null);
    public static final Dimension LENGTH = new Dimension(1, 0, 0, 0, null);
    public static final Dimension AREA = new Dimension(2, 0, 0, 0, null);
    public static final Dimension VOLUME = new Dimension(3, 0, 0, 0, null);
    public static final Dimension MASS = new Dimension(0, 1, 0, 0, null);
    public static final Dimension ANGLE = new Dimension(0, 0, 1, 0, null);
    public static final Dimension DENSITY = new Dimension(-3, 1, 0, 0, null);

    public Dimension {
        if ((money == 0) != (currency == null)) {
            throw new IllegalArgumentException("money to the power " + money + " in currency " + currency);
        }
    }

    public static Dimension money(String currency) {
        return new Dimension(0, 0, 0, 1, currency);
    }

    public boolean isNumber() {
        return equals(NUMBER);
    }

    /** Whether both can meet in one product: they name no two different currencies. */
    public boolean mixesWith(Dimension other) {
        return currency == null || other.currency == null || currency.equals(other.currency);
    }

    /** The kind of a product; the two must {@linkplain #mixesWith mix}. */
    public Dimension times(Dimension other) {
        if (!mixesWith(other)) {
            throw new IllegalArgumentException(currency + " does not mix with " + other.currency);
        }
        return of(
                length + other.length,
                mass + other.mass,
                angle + other.angle,
                money + other.money,
                currency != null ? currency : other.currency);
    }

    public Dimension dividedBy(Dimension other) {
        return times(other.power(-1));
    }

    public Dimension power(int exponent) {
        return of(length * exponent, mass * exponent, angle * exponent, money * exponent, currency);
    }

    /** Whether a square root exists: all powers are even. */
    public boolean isSquare() {
        return length % 2 == 0 && mass % 2 == 0 && angle % 2 == 0 && money % 2 == 0;
    }

    /** The kind whose square this is; it must be {@linkplain #isSquare a square}. */
    public Dimension squareRoot() {
        if (!isSquare()) {
            throw new IllegalArgumentException("no square root of " + this);
        }
        return of(length / 2, mass / 2, angle / 2, money / 2, currency);
    }

    /** In words, with an article: {@code a length}, {@code an angle}, {@code an amount in EUR}. */
    public String words() {
        if (isNumber()) {
            return "a plain number";
        } else if (equals(LENGTH)) {
            return "a length";
        } else if (equals(AREA)) {
            return "an area";
        } else if (equals(VOLUME)) {
            return "a volume";
        } else if (equals(MASS)) {
            return "a weight";
        } else if (equals(ANGLE)) {
            return "an angle";
        } else if (equals(DENSITY)) {
            return "a density";
        } else if (currency != null && equals(money(currency))) {
            return "an amount in " + currency;
        } else {
            return "a quantity in " + Unit.shownFor(this).symbol();
        }
    }

    private static Dimension of(int length, int mass, int angle, int money, @Nullable String currency) {
        return new Dimension(length, mass, angle, money, money == 0 ? null : currency);
    }
}
