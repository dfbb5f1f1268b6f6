// Bandwright. SPDX-License-Identifier: Apache-2.0
/**
 * Makes the kernel known to Jupyter: a folder with a description, the program itself and what makes it start faster. May depend on
 * `protocol`, `session` and `cell`, for the rehearsal of a start.
 */
@NullMarked
package bandwright.kernel.install;

import org.jspecify.annotations.NullMarked;
