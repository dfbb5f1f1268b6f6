// Bandwright. SPDX-License-Identifier: Apache-2.0
/**
 * The page to work at: a folder's notebooks, open ones with their cells and the design that follows every change, and what the page asks of
 * them as JSON. Speaks to browsers through {@code page.server} alone.
 */
@NullMarked
package bandwright.kernel.page.desk;

import org.jspecify.annotations.NullMarked;
