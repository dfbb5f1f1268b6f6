// Bandwright. SPDX-License-Identifier: Apache-2.0
/** Sections and layouts in their true size as SVG, a group for each meaning. May depend on the room around it. */
@NullMarked
package bandwright.dsl.export.svg;

import org.jspecify.annotations.NullMarked;
