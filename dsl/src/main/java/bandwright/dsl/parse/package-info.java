// Bandwright. SPDX-License-Identifier: Apache-2.0
/** From text to syntax tree, behind one door: {@link bandwright.dsl.parse.RingParser}. Knows words and order, not meaning. May depend on {@code source}, {@code diagnostic}, {@code quantity} and {@code syntax}; the only package that touches ANTLR. */
@NullMarked
package bandwright.dsl.parse;

import org.jspecify.annotations.NullMarked;
