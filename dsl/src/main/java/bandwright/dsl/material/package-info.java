// Bandwright. SPDX-License-Identifier: Apache-2.0
/**
 * What the trade knows about its materials: metals and elements, stones and their cuts, sieves and weights, casting. The
 * facts are data files beside this package, each row with its source; the formulas name theirs. May depend on {@code
 * quantity} and on nothing else of the language.
 */
@NullMarked
package bandwright.dsl.material;

import org.jspecify.annotations.NullMarked;
