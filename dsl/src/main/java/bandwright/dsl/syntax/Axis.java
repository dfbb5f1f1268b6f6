// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import java.util.List;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.source.Span;

/** One definition that {@code vary} changes. */
public sealed interface Axis extends Node {
    Name name();

    /** Over its own range. */
    record OwnRange(Name name, Span span) implements Axis {}

    /** {@code from US 4 to US 10 step 1/2}; without a step, nine even values. */
    record Stretch(
            Name name,
            Expression from,
            Expression to,
            @Nullable Expression step,
            Span span) implements Axis {}

    /** {@code over 4 mm, 5 mm}. */
    record Values(Name name, List<Expression> values, Span span) implements Axis {
        public Values {
            values = List.copyOf(values);
        }
    }
}
