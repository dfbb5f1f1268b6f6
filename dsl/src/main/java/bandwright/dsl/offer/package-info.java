// Bandwright. SPDX-License-Identifier: Apache-2.0
/** An offer from a user's own prices, with every line's arithmetic. Depends on {@code resolve}, {@code measure}, {@code view}. */
@NullMarked
package bandwright.dsl.offer;

import org.jspecify.annotations.NullMarked;
