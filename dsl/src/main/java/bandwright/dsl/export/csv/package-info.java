// Bandwright. SPDX-License-Identifier: Apache-2.0
/** Tables as comma-separated values. May depend on the room around it. */
@NullMarked
package bandwright.dsl.export.csv;

import org.jspecify.annotations.NullMarked;
