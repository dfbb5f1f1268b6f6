// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import java.util.List;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.source.Span;

/** A property of a row; count, sink and girdle are {@link Property.Amount amounts}. */
public sealed interface StoneRowProperty extends Property
        permits Property.Amount,
                Property.Around,
                StoneRowProperty.Across,
                StoneRowProperty.Spacing,
                StoneRowProperty.Staggered,
                StoneRowProperty.Stone,
                StoneRowProperty.Upright {
    /**
     * {@code stone baguette sapphire 2.5 mm by 1.5 mm within 0.05 mm}.
     *
     * @param size a diameter, or the size around
     * @param by the size across, for stones that are not round
     * @param within the tolerance of the parcel
     */
    record Stone(
            Name cut,
            Name material,
            Expression size,
            @Nullable Expression by,
            @Nullable Expression within,
            Span span) implements StoneRowProperty {
        @Override
        public String word() {
            return "stone";
        }
    }

    /** {@code spacing at least 0.15 mm}, or exactly so much. */
    record Spacing(boolean atLeast, Expression amount, Span span) implements StoneRowProperty {
        @Override
        public String word() {
            return "spacing";
        }
    }

    /** The offsets along the finger: one row for each. */
    record Across(List<Expression> offsets, Span span) implements StoneRowProperty {
        public Across {
            offsets = List.copyOf(offsets);
        }

        @Override
        public String word() {
            return "across";
        }
    }

    /** Each second row is shifted by half a step. */
    record Staggered(Span span) implements StoneRowProperty {
        @Override
        public String word() {
            return "staggered";
        }
    }

    /** Stones stand along the radius. */
    record Upright(Span span) implements StoneRowProperty {
        @Override
        public String word() {
            return "upright";
        }
    }
}
