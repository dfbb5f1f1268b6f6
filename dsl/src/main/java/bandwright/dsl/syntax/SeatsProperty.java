// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.source.Span;

/** A property of the seats of a row; the sizes are {@link Property.Amount amounts}. */
public sealed interface SeatsProperty extends Property
        permits Property.Amount, Property.Made, SeatsProperty.Channel, SeatsProperty.Deburr {
    /** One slot that follows the row. */
    record Channel(Block<ChannelProperty> block, Span span) implements SeatsProperty {
        @Override
        public String word() {
            return "channel";
        }
    }

    /** The hole&#39;s edge is broken at the finger, by so much where it is said. */
    record Deburr(@Nullable Expression amount, Span span) implements SeatsProperty {
        @Override
        public String word() {
            return "deburr";
        }
    }
}
