// Bandwright. SPDX-License-Identifier: Apache-2.0
/** The headless runner: executes a notebook's cells in order and gathers what came of each. May depend on `notebook`, `display`, `cell` and on the door of the language. */
@NullMarked
package bandwright.kernel.run;

import org.jspecify.annotations.NullMarked;
