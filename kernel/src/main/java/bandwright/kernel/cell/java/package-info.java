// Bandwright. SPDX-License-Identifier: Apache-2.0
/**
 * Cells in Java: JShell compiles them, its classes are loaded with steps at which a cell can be stopped, and what they do to the
 * design becomes ring text of the cell. May depend on `cell`, `notebook` and on what cells see, `bandwright.design`.
 */
@NullMarked
package bandwright.kernel.cell.java;

import org.jspecify.annotations.NullMarked;
