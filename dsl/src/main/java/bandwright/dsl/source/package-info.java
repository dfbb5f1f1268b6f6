// Bandwright. SPDX-License-Identifier: Apache-2.0
/** The text a person wrote and places in it, counted in code points. Depends on nothing. */
@NullMarked
package bandwright.dsl.source;

import org.jspecify.annotations.NullMarked;
