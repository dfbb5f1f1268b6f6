// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.source.Span;

/** What is handed to a form, a function or a measure: {@code width: breadth}, or a value alone. */
public record Argument(@Nullable Name name, Expression value, Span span) implements Node {}
