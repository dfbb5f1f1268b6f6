// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.design;

/** A value of the ring language: a {@link Quantity} or a finger {@link Size}. */
public sealed interface Value permits Quantity, Size {
    /** As the language shows it: {@code 42 mm}, {@code US 7 1/4}. */
    @Override
    String toString();

    /**
     * As the language writes it, with all its digits.
     *
     * @throws DesignException if the language has no unit to write it in, as for one over a length
     */
    String expression();
}
