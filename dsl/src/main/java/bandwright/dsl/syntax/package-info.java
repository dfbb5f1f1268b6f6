// Bandwright. SPDX-License-Identifier: Apache-2.0
/** The syntax tree: records under sealed interfaces, each with its span, with a printer and a dump for tests. May depend on {@code source} and {@code quantity}. */
@NullMarked
package bandwright.dsl.syntax;

import org.jspecify.annotations.NullMarked;
