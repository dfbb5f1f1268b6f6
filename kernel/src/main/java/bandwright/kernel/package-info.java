// Bandwright. SPDX-License-Identifier: Apache-2.0
/** Placeholder. */
@NullMarked
package bandwright.kernel;

import org.jspecify.annotations.NullMarked;
