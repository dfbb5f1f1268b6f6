// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import bandwright.dsl.source.Span;

/** A part of the syntax tree, with the stretch of text it was read from. */
public interface Node {
    Span span();
}
