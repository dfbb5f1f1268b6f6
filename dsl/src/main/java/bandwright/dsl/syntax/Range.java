// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.source.Span;

/** Where a handle may move: {@code between 3 mm and 8 mm step 0.1 mm}. */
public record Range(
        Expression low, Expression high, @Nullable Expression step, Span span) implements Node {}
