// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.source.Span;

/**
 * Where a picture is taken from.
 *
 * @param angle present if and only if the side is {@link Side#ANGLE}: the place around the ring that faces the viewer
 */
public record Viewpoint(Side side, @Nullable Expression angle, Span span) implements Node {
    public Viewpoint {
        if ((side == Side.ANGLE) != (angle != null)) {
            throw new IllegalArgumentException(side + " with angle " + angle);
        }
    }

    /** The named sides, and any angle. */
    public enum Side {
        TOP,
        FRONT,
        SIDE,
        THREE_QUARTER,
        ANGLE
    }
}
