// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.quantity;

import java.util.Locale;
import java.util.Optional;

/**
 * The size of a finger in one of the trade's systems, for example {@code US 7 1/4}, {@code UK N 1/2} or {@code ISO 57}.
 *
 * <p>Equality is by system and number; {@link #compareTo} is by circumference, so {@code CH 14} and {@code ISO 54} are
 * not equal and yet neither is larger.
 *
 * @param system how it is written
 * @param number the size in the system's own steps; for UK the letter's place, A being 1, N 14 and Z+1 27
 */
public record FingerSize(SizeSystem system, double number) implements Comparable<FingerSize> {
    /** The least and the largest inner diameter, in mm, that a finger may have: beyond them a size is a slip. */
    static final double SMALLEST_DIAMETER_MM = 10;

    static final double LARGEST_DIAMETER_MM = 35;

    /** The size of a ring of that inner circumference in millimetres, written in a system. */
    public static FingerSize ofCircumference(SizeSystem system, double circumferenceMm) {
        return new FingerSize(system, system.number(circumferenceMm));
    }

    /** Inner circumference in millimetres, by the system's formula. */
    public double circumferenceMm() {
        return system.circumferenceMm(number);
    }

    /** Inner diameter in millimetres: the circumference over pi. */
    public double diameterMm() {
        return circumferenceMm() / Math.PI;
    }

    /** The same finger in another system, unrounded. */
    public FingerSize in(SizeSystem other) {
        return other == system ? this : ofCircumference(other, circumferenceMm());
    }

    /** The nearest size that is made in a system ({@link SizeSystem#standardStep()}); half-way goes to the larger. */
    public FingerSize nearestStandard(SizeSystem other) {
        double step = other.standardStep();
        return new FingerSize(other, Math.floor(in(other).number / step + 0.5) * step);
    }

    /** So many of the system's own steps larger: {@code US 7} plus 1/4 is a quarter size up, UK plus 1 the next letter. */
    public FingerSize plus(double steps) {
        return new FingerSize(system, number + steps);
    }

    /** So many of the system's own steps smaller. */
    public FingerSize minus(double steps) {
        return plus(-steps);
    }

    /**
     * This size less another of the same system, in its own steps.
     *
     * @throws IllegalArgumentException if the systems differ: such sizes compare, but have no common step
     */
    public double minus(FingerSize other) {
        if (system != other.system) {
            throw new IllegalArgumentException(text() + " and " + other.text() + " have no step in common");
        }
        return number - other.number;
    }

    /** By circumference, whatever the systems. */
    @Override
    public int compareTo(FingerSize other) {
        return Double.compare(circumferenceMm(), other.circumferenceMm());
    }

    /**
     * Why this can be no finger's size, as a sentence for people; empty if it can. A size must give an inner diameter of
     * 10 mm to 35 mm and must not lie before the start of its system.
     */
    public Optional<String> problem() {
        double diameter = diameterMm();
        // Written so that a size that is no number at all is refused as well.
        if (!(diameter >= SMALLEST_DIAMETER_MM && diameter <= LARGEST_DIAMETER_MM)) {
            return Optional.of(String.format(
                    Locale.ROOT,
                    "%s would be an inner diameter of %s mm; fingers lie between 10 mm and 35 mm",
                    text(),
                    SizeText.decimal(diameter)));
        }
        if (number < system.smallest()) {
            return Optional.of(String.format(
                    Locale.ROOT, "%s sizes start at %s", system.word(), SizeText.number(system, system.smallest())));
        }
        return Optional.empty();
    }

    /** As the language writes it: {@code US 7 1/4}, {@code UK N 1/2}, {@code UK Z+1}, {@code ISO 54.4}. */
    public String text() {
        return system.word() + " " + SizeText.number(system, number);
    }

    @Override
    public String toString() {
        return text();
    }
}
