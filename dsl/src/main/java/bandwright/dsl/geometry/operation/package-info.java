// Bandwright. SPDX-License-Identifier: Apache-2.0
/**
 * What is done to bodies: sweep, boolean, clip, mirror and weld, clean up, search for the thinnest wall. One class a
 * question. Depends on {@code geometry.plane} and {@code geometry.solid} only.
 *
 * <p>Robustness: every operation keeps bodies closed by construction. The boolean decides each elementary question once,
 * ties broken by an imagined infinitesimal displacement of one body, and builds the result from the answers alone;
 * coordinates never decide how faces join. The story is told in {@code dsl/docs/solids.md}.
 */
@NullMarked
package bandwright.dsl.geometry.operation;

import org.jspecify.annotations.NullMarked;
