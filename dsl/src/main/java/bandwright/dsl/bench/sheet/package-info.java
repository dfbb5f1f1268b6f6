// Bandwright. SPDX-License-Identifier: Apache-2.0
/** The bench sheet: what goes to the bench with a ring, in the order in which it is asked for there. */
@NullMarked
package bandwright.dsl.bench.sheet;

import org.jspecify.annotations.NullMarked;
