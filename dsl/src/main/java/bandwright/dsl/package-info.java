// Bandwright. SPDX-License-Identifier: Apache-2.0
/**
 * The door of the ring language: a {@link bandwright.dsl.Workbench} takes a cell's text and gives back a new workbench,
 * what is wrong with the text, and what it asked to be shown. May depend on everything in this module.
 */
@NullMarked
package bandwright.dsl;

import org.jspecify.annotations.NullMarked;
