// Bandwright. SPDX-License-Identifier: Apache-2.0
/** The 3MF format: parts as named solids with their metals (3MF Consortium, 3MF Core Specification 1.3.0). May depend on the room around it. */
@NullMarked
package bandwright.dsl.export.threemf;

import org.jspecify.annotations.NullMarked;
