// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import java.util.List;

import bandwright.dsl.source.Span;

/** A property of a groove; its sizes are {@link Property.Amount amounts}. */
public sealed interface GrooveProperty extends Property
        permits GrooveProperty.DepthThrough,
                GrooveProperty.Ending,
                GrooveProperty.FloorProfile,
                GrooveProperty.Inside,
                GrooveProperty.Joined,
                GrooveProperty.Keep,
                GrooveProperty.Leaving,
                GrooveProperty.LetIn,
                Property.Amount,
                Property.Around,
                Property.Made {
    /** {@code depth through}: down to the finger. */
    record DepthThrough(Span span) implements GrooveProperty {
        @Override
        public String word() {
            return "depth";
        }
    }

    /** {@code profile name}: its lower outline is the floor. */
    record FloorProfile(Name profile, Span span) implements GrooveProperty {
        @Override
        public String word() {
            return "profile";
        }
    }

    /** {@code ends square} or {@code ends round}. */
    record Ending(boolean round, Span span) implements GrooveProperty {
        @Override
        public String word() {
            return "ends";
        }
    }

    /** {@code keep stripe in red-gold-585}. */
    record Keep(Name part, Name metal, Span span) implements GrooveProperty {
        @Override
        public String word() {
            return "keep";
        }
    }

    /** How a kept ring gets into its place. */
    sealed interface LetIn extends GrooveProperty {
        @Override
        default String word() {
            return "let-in";
        }
    }

    /** {@code let-in from fingertip leaving collar}, or from the hand. */
    record LetInFrom(boolean fingertip, Name collar, Span span) implements LetIn {}

    /** {@code let-in in halves at 9 deg}. */
    record LetInHalves(Expression at, Span span) implements LetIn {}

    /** {@code let-in cast}. */
    record LetInCast(Span span) implements LetIn {}

    /** {@code joined by solder}. */
    record Joined(Joint joint, Span span) implements GrooveProperty {
        @Override
        public String word() {
            return "joined";
        }
    }

    /** What holds two parts together. */
    enum Joint {
        SOLDER,
        WELD,
        PRESS
    }

    /** {@code leaving inner-rim, outer-rim}: the pieces, from the hand to the fingertip. */
    record Leaving(List<Name> pieces, Span span) implements GrooveProperty {
        public Leaving {
            pieces = List.copyOf(pieces);
        }

        @Override
        public String word() {
            return "leaving";
        }
    }

    /** {@code inside}: the groove is on the inner wall. */
    record Inside(Span span) implements GrooveProperty {
        @Override
        public String word() {
            return "inside";
        }
    }
}
