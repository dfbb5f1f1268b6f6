// Bandwright. SPDX-License-Identifier: Apache-2.0
/** A ring as a binary glTF 2.0 file, for viewers of every kind. May depend on {@code construct} and {@code view}. */
@NullMarked
package bandwright.dsl.export.glb;

import org.jspecify.annotations.NullMarked;
