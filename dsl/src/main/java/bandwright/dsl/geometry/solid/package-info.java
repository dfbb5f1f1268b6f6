// Bandwright. SPDX-License-Identifier: Apache-2.0
/** Bodies: closed triangle meshes. Knows no rings. */
@NullMarked
package bandwright.dsl.geometry.solid;

import org.jspecify.annotations.NullMarked;
