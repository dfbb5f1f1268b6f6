// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.model.OwnLimit;
import bandwright.dsl.quantity.Dimension;
import bandwright.dsl.quantity.Quantity;

/**
 * A limit that a check holds a measure against.
 *
 * @param value with the unit it is told in
 * @param source title; publisher; year; section; or {@code common practice, no source}
 * @param how published, derived or common practice
 * @param rivals what other sources say; shown, never averaged
 * @param own the user's, which took the place of {@code builtIn}
 */
public record Limit(
        String key,
        Quantity value,
        Bound bound,
        Severity severity,
        String source,
        String how,
        String note,
        List<Rival> rivals,
        @Nullable OwnLimit own) {
    /** Lengths are shown to a thousandth of a millimetre: what is shown as the limit holds it. */
    private static final double SAME_MM = 5e-4;

    /** Other differences below this are rounding. */
    private static final double SAME = 1e-7;

    public Limit {
        rivals = List.copyOf(rivals);
    }

    /** On which side of the limit it is good. */
    public enum Bound {
        LEAST,
        MOST
    }

    /** What another source says. */
    public record Rival(Quantity value, String source, String how, String note) {}

    /** The same with the user's value; the one it replaces is a rival then. */
    Limit with(OwnLimit other) {
        List<Rival> others = new ArrayList<>(List.of(new Rival(value, source, how, note)));
        others.addAll(rivals);
        return new Limit(key, other.value(), bound, severity, source, how, note, others, other);
    }

    /** The same with another value of the same kind. */
    Limit worth(double other) {
        return new Limit(
                key,
                new Quantity(other, value.dimension(), value.shown()),
                bound,
                severity,
                source,
                how,
                note,
                rivals,
                own);
    }

    /** Whether a margin is on the good side, but for rounding. */
    static boolean isHeld(Quantity measured, double margin) {
        return margin >= -(measured.dimension().equals(Dimension.LENGTH) ? SAME_MM : SAME);
    }

    /** How far a measure is on the good side; negative on the other. */
    double margin(double measured) {
        return margin(measured, value.value());
    }

    double margin(double measured, double limit) {
        return bound == Bound.LEAST ? measured - limit : limit - measured;
    }

    /** Other rules by which a measure would pass where it fails by this one, or the other way round. */
    public List<Rival> otherwise(Quantity measured) {
        if (!measured.fits(value)) {
            return List.of();
        }
        boolean holds = isHeld(measured, margin(measured.value(), value.value()));
        return rivals.stream()
                .filter(rival ->
                        isHeld(measured, margin(measured.value(), rival.value().value())) != holds)
                .toList();
    }

    /** Such as {@code at least 0.6 mm}. */
    public String text() {
        return text(value);
    }

    /** The same with another value. */
    public String text(Quantity value) {
        return "at " + bound.name().toLowerCase(Locale.ROOT) + " " + value;
    }
}
