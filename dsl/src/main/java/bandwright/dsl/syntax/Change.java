// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import bandwright.dsl.source.Span;

/** Another value for a definition, for the time of a question. */
public record Change(Name name, Expression value, Span span) implements Node {}
