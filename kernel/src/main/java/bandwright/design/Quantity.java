// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.design;

import java.util.List;
import java.util.Objects;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.quantity.Dimension;
import bandwright.dsl.quantity.Unit;

/**
 * A number with its unit. What does not fit together is refused in the language's own words; nothing is rounded but what is shown.
 *
 * <pre>{@code
 * Quantity wall = design.get("thickness").minus(mm(1));   // 0.9 mm
 * mm(5).plus(g(2));                                       // a length and a weight cannot be added
 * }</pre>
 */
public final class Quantity implements Value, Comparable<Quantity> {
    private final bandwright.dsl.quantity.Quantity quantity;

    private Quantity(bandwright.dsl.quantity.Quantity quantity) {
        if (!Double.isFinite(quantity.value())) {
            throw refused("no-value");
        }
        this.quantity = quantity;
    }

    /** The language's own quantity. */
    public static Quantity of(bandwright.dsl.quantity.Quantity quantity) {
        return new Quantity(quantity);
    }

    /** As the language's own quantity. */
    public bandwright.dsl.quantity.Quantity inLanguage() {
        return quantity;
    }

    static Quantity of(double count, Unit unit) {
        return new Quantity(bandwright.dsl.quantity.Quantity.of(count, unit));
    }

    /** The sum of two of one kind. */
    public Quantity plus(Quantity other) {
        return new Quantity(quantity.plus(fitting(other, "added")));
    }

    /** The difference of two of one kind. */
    public Quantity minus(Quantity other) {
        return new Quantity(quantity.minus(fitting(other, "subtracted")));
    }

    /** The product: a length by a length is an area. */
    public Quantity times(Quantity other) {
        return new Quantity(quantity.times(mixing(other)));
    }

    public Quantity times(double factor) {
        return times(Units.number(factor));
    }

    /** The quotient: a weight by a volume is a density, a length by a length a plain number. */
    public Quantity dividedBy(Quantity other) {
        if (other.quantity.value() == 0) {
            throw refused("divided-by-zero");
        }
        return new Quantity(quantity.dividedBy(mixing(other)));
    }

    public Quantity dividedBy(double divisor) {
        return dividedBy(Units.number(divisor));
    }

    public Quantity negate() {
        return new Quantity(quantity.negate());
    }

    /** Below 0, 0 or above 0 as this is less than, equal to or more than another of its kind; equal means within one part in 10^9. */
    @Override
    public int compareTo(Quantity other) {
        return quantity.compare(fitting(other, "compared"));
    }

    public boolean isLessThan(Quantity other) {
        return compareTo(other) < 0;
    }

    public boolean isMoreThan(Quantity other) {
        return compareTo(other) > 0;
    }

    /** The same, shown in another unit of its kind: {@code weight.in("dwt")}. */
    public Quantity in(String unit) {
        return new Quantity(quantity.in(unit(unit)));
    }

    /** How many of a unit of its kind this is: {@code mm(25.4).count("inch")} is 1. */
    public double count(String unit) {
        return quantity.count(unit(unit));
    }

    /** The number that is shown, unrounded: of a length its millimetres unless {@link #in another unit} was asked for. */
    public double number() {
        return quantity.count(shown());
    }

    /** The unit it is shown in; empty for a plain number. */
    public String unit() {
        return shown().symbol();
    }

    private Unit shown() {
        Unit asked = quantity.shown();
        return asked != null ? asked : Unit.shownFor(quantity.dimension());
    }

    private Unit unit(String symbol) {
        Unit unit = Units.unit(symbol);
        if (!unit.dimension().equals(quantity.dimension())) {
            throw refused("unit-unfit", quantity.dimension().words(), symbol);
        }
        return unit;
    }

    private bandwright.dsl.quantity.Quantity fitting(Quantity other, String done) {
        if (!quantity.fits(other.quantity)) {
            throw refused("unit-mismatch", words(this), words(other), done);
        }
        return other.quantity;
    }

    private bandwright.dsl.quantity.Quantity mixing(Quantity other) {
        if (!quantity.dimension().mixesWith(other.quantity.dimension())) {
            throw refused("currencies-mixed", words(this), words(other));
        }
        return other.quantity;
    }

    private static String words(Quantity one) {
        Dimension dimension = one.quantity.dimension();
        return dimension.words();
    }

    static DesignException refused(String code, String... arguments) {
        return new DesignException(
                List.of(Diagnostic.error(code, null).with(arguments).build()));
    }

    @Override
    public String expression() {
        return Literals.of(quantity);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Quantity that
                && quantity.value() == that.quantity.value()
                && quantity.fits(that.quantity);
    }

    @Override
    public int hashCode() {
        return Objects.hash(quantity.value(), quantity.dimension());
    }

    @Override
    public String toString() {
        return quantity.toString();
    }
}
