// Bandwright. SPDX-License-Identifier: Apache-2.0
/**
 * Files of the design, made in memory; who asked for them writes them. What goes into a file is {@link Content}, how it is
 * written a {@link Format}, found by the name's ending among {@link Formats}: a package for each format, none of which knows
 * another. The same design gives the same bytes on every machine: no clock, no packing that is up to the platform. Depends on
 * {@code construct}, {@code pattern} and {@code view}.
 */
@NullMarked
package bandwright.dsl.export;

import org.jspecify.annotations.NullMarked;
