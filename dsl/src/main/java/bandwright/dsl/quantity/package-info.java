// Bandwright. SPDX-License-Identifier: Apache-2.0
/** Numbers with units: dimensions, units, arithmetic and the way values are shown. Depends on nothing. */
@NullMarked
package bandwright.dsl.quantity;

import org.jspecify.annotations.NullMarked;
