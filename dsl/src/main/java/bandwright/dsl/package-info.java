// Bandwright. SPDX-License-Identifier: Apache-2.0
/** Placeholder. */
@NullMarked
package bandwright.dsl;

import org.jspecify.annotations.NullMarked;
