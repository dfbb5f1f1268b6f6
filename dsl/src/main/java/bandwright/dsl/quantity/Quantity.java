// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.quantity;

import org.jspecify.annotations.Nullable;

/**
 * A number with its kind. Calculation is never rounded; only {@link QuantityFormat} rounds.
 *
 * @param value in base units: mm, g, deg, one of the currency, and their products
 * @param shown the unit it is to be shown in, where one was asked for; of the same dimension
 */
public record Quantity(
        double value, Dimension dimension, @Nullable Unit shown) {
    /** Two values are equal when they differ by no more than this part of the larger one. */
    public static final double EQUAL_WITHIN = 1e-9;

    public Quantity {
        if (shown != null && !shown.dimension().equals(dimension)) {
            throw new IllegalArgumentException(shown.symbol() + " cannot show " + dimension);
        }
    }

    public static Quantity number(double value) {
        return new Quantity(value, Dimension.NUMBER, null);
    }

    public static Quantity millimetres(double value) {
        return new Quantity(value, Dimension.LENGTH, null);
    }

    public static Quantity grams(double value) {
        return new Quantity(value, Dimension.MASS, null);
    }

    public static Quantity degrees(double value) {
        return new Quantity(value, Dimension.ANGLE, null);
    }

    public static Quantity carats(double value) {
        return of(value, Unit.CARAT);
    }

    /** So many of a unit. Weights given in carats or points are shown in carats, all else in its usual unit. */
    public static Quantity of(double count, Unit unit) {
        boolean carats = unit.symbol().equals("ct") || unit.symbol().equals("pt");
        return new Quantity(count * unit.factor(), unit.dimension(), carats ? Unit.CARAT : null);
    }

    /** The same quantity, to be shown in a unit of its kind. */
    public Quantity in(Unit unit) {
        return new Quantity(value, dimension, unit);
    }

    /** How many of a unit of its kind this is. */
    public double count(Unit unit) {
        requireFit(unit.dimension());
        return value / unit.factor();
    }

    /** Whether both are of one kind, so that they can be added and compared. */
    public boolean fits(Quantity other) {
        return dimension.equals(other.dimension);
    }

    /** The sum; both must {@linkplain #fits fit}. */
    public Quantity plus(Quantity other) {
        requireFit(other.dimension);
        return new Quantity(value + other.value, dimension, commonUnit(other));
    }

    /** The difference; both must {@linkplain #fits fit}. */
    public Quantity minus(Quantity other) {
        return plus(other.negate());
    }

    public Quantity negate() {
        return new Quantity(-value, dimension, shown);
    }

    /** The product; the kinds must {@linkplain Dimension#mixesWith mix}. */
    public Quantity times(Quantity other) {
        Unit unit = other.dimension.isNumber() ? shown : dimension.isNumber() ? other.shown : null;
        Dimension product = dimension.times(other.dimension);
        return new Quantity(
                value * other.value, product, unit != null && unit.dimension().equals(product) ? unit : null);
    }

    /** The quotient; the kinds must {@linkplain Dimension#mixesWith mix}. Division by 0 gives no finite value. */
    public Quantity dividedBy(Quantity other) {
        return new Quantity(
                value / other.value, dimension.dividedBy(other.dimension), other.dimension.isNumber() ? shown : null);
    }

    /** A whole power. */
    public Quantity power(int exponent) {
        return new Quantity(StrictMath.pow(value, exponent), dimension.power(exponent), null);
    }

    /** The square root; the kind must be {@linkplain Dimension#isSquare a square}. */
    public Quantity squareRoot() {
        return new Quantity(StrictMath.sqrt(value), dimension.squareRoot(), null);
    }

    /** Below 0, 0 or above 0 as this is less, equal within {@link #EQUAL_WITHIN}, or more; both must fit. */
    public int compare(Quantity other) {
        requireFit(other.dimension);
        double difference = Math.abs(value - other.value);
        boolean equal =
                value == other.value || difference <= EQUAL_WITHIN * Math.max(Math.abs(value), Math.abs(other.value));
        return equal ? 0 : Double.compare(value, other.value);
    }

    @Override
    public String toString() {
        return QuantityFormat.format(this);
    }

    private @Nullable Unit commonUnit(Quantity other) {
        return shown != null && shown.equals(other.shown) ? shown : null;
    }

    private void requireFit(Dimension other) {
        if (!dimension.equals(other)) {
            throw new IllegalArgumentException(dimension.words() + " does not fit " + other.words());
        }
    }
}
