// Bandwright. SPDX-License-Identifier: Apache-2.0
/**
 * The photograph of a ring: rays cast through a scene of metal bodies and cut stones in a small studio. The same scene gives the same pixels on every machine and for any number of threads. May depend on {@code geometry}, {@code material}, {@code view} and {@code view.image}.
 */
@NullMarked
package bandwright.dsl.view.render;

import org.jspecify.annotations.NullMarked;
