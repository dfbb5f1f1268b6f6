// Bandwright. SPDX-License-Identifier: Apache-2.0
/**
 * Help for whoever writes a text, whatever the editor: what may come next, what a word means, whether a cell is complete, how
 * it looks when it is tidy, which word is what. From the grammar and the design; depends on {@code parse}, {@code resolve} and
 * {@code material}.
 */
@NullMarked
package bandwright.dsl.edit;

import org.jspecify.annotations.NullMarked;
