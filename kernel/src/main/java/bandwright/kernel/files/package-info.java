// Bandwright. SPDX-License-Identifier: Apache-2.0
/** What a cell has exported, on its way to the disk: inside one folder, whole or not at all. May depend on the door of the language. */
@NullMarked
package bandwright.kernel.files;

import org.jspecify.annotations.NullMarked;
