// Bandwright. SPDX-License-Identifier: Apache-2.0
/**
 * From syntax tree to checked design. {@link bandwright.dsl.resolve.Definitions} holds what the cells said, immutable;
 * {@link bandwright.dsl.resolve.Resolution} works out what it means, each thing when it is first asked for. May depend on
 * {@code syntax}, {@code material}, {@code model}, {@code geometry.plane} and what lies before them; knows no solids.
 */
@NullMarked
package bandwright.dsl.resolve;

import org.jspecify.annotations.NullMarked;
