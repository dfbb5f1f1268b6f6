// Bandwright. SPDX-License-Identifier: Apache-2.0
/** One cell, from its text to what came of it, in whatever language it is written: what the headless runner and the kernel share. Knows no sockets and no files. May depend on `notebook`, `display` and on the door of the language. */
@NullMarked
package bandwright.kernel.cell;

import org.jspecify.annotations.NullMarked;
