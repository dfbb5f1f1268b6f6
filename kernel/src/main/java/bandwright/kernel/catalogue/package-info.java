// Bandwright. SPDX-License-Identifier: Apache-2.0
/** A design in every combination of its handles, row by row into a file: more than memory holds, and more than one sitting. */
@NullMarked
package bandwright.kernel.catalogue;

import org.jspecify.annotations.NullMarked;
