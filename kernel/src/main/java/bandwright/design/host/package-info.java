// Bandwright. SPDX-License-Identifier: Apache-2.0
/** What stands behind {@link bandwright.design.Cell} while a cell runs, and how one is stopped. For the kernel, not for cells. */
@NullMarked
package bandwright.design.host;

import org.jspecify.annotations.NullMarked;
