// Bandwright. SPDX-License-Identifier: Apache-2.0
/** Sections and layouts in their true size as DXF, release 12, a layer for each meaning. May depend on the room around it. */
@NullMarked
package bandwright.dsl.export.dxf;

import org.jspecify.annotations.NullMarked;
