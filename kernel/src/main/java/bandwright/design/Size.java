// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.design;

import bandwright.dsl.quantity.FingerSize;
import bandwright.dsl.quantity.SizeReading;
import bandwright.dsl.quantity.SizeSystem;

/** A finger size. */
public final class Size implements Value, Comparable<Size> {
    private final FingerSize size;

    private Size(FingerSize size) {
        size.problem().ifPresent(problem -> {
            throw Quantity.refused("size-refused", problem);
        });
        this.size = size;
    }

    /** The language's own finger size. */
    public static Size of(FingerSize size) {
        return new Size(size);
    }

    static Size of(SizeSystem system, double number) {
        return new Size(new FingerSize(system, number));
    }

    static Size read(SizeSystem system, String text) {
        String[] words = text.strip().split(" ", 2);
        SizeReading reading = SizeReading.read(system, words[0], words.length == 2 ? words[1] : "");
        if (reading instanceof SizeReading.Accepted accepted) {
            return new Size(accepted.size());
        }
        throw Quantity.refused("size-refused", ((SizeReading.Refused) reading).problem());
    }

    /** So many of its system's own steps larger: {@code us(7).plus(0.25)} is a quarter size up. */
    public Size plus(double steps) {
        return new Size(size.plus(steps));
    }

    /** So many of its system's own steps smaller. */
    public Size minus(double steps) {
        return new Size(size.minus(steps));
    }

    /** The inner diameter of the ring, a length. */
    public Quantity diameter() {
        return Units.mm(size.diameterMm());
    }

    /** The inner circumference of the ring, a length. */
    public Quantity circumference() {
        return Units.mm(size.circumferenceMm());
    }

    /** By circumference, whatever the systems. */
    @Override
    public int compareTo(Size other) {
        return size.compareTo(other.size);
    }

    @Override
    public String expression() {
        return Literals.of(size);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Size that && size.equals(that.size);
    }

    @Override
    public int hashCode() {
        return size.hashCode();
    }

    @Override
    public String toString() {
        return size.text();
    }
}
