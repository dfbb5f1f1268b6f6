// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import bandwright.dsl.source.Span;

/** The reason a person gave for a decision. */
public record Because(String reason, Span span) implements Node {}
