// Bandwright. SPDX-License-Identifier: Apache-2.0
/** An executed notebook as one HTML file that needs nothing else: no script but the one that turns models, no network, readable on screen, telephone and paper. May depend on `notebook`, `display`, `run`, on the door of the language and on commonmark. */
@NullMarked
package bandwright.kernel.page.export;

import org.jspecify.annotations.NullMarked;
