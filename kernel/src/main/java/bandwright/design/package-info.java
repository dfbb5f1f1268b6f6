// Bandwright. SPDX-License-Identifier: Apache-2.0
/**
 * What cells in Java see of the design: {@link bandwright.design.Design}, quantities with units, and {@link bandwright.design.Cell} to
 * show things and to ask. Knows nothing of kernels; may depend on the door of the language and on `host`.
 */
@NullMarked
package bandwright.design;

import org.jspecify.annotations.NullMarked;
