// Bandwright. SPDX-License-Identifier: Apache-2.0
/** The STL format, binary: a part a file, triangles alone. May depend on the room around it. */
@NullMarked
package bandwright.dsl.export.stl;

import org.jspecify.annotations.NullMarked;
