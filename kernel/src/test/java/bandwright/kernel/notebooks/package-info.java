// Bandwright. SPDX-License-Identifier: Apache-2.0
/** The project's notebooks, as documents and as tests. */
@NullMarked
package bandwright.kernel.notebooks;

import org.jspecify.annotations.NullMarked;
