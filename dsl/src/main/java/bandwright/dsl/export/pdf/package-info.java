// Bandwright. SPDX-License-Identifier: Apache-2.0
/**
 * Pages to print, as PDF: what a sheet holds is a list of {@link bandwright.dsl.export.pdf.PageItem}s, which flow from page to page.
 * Lengths are mm of paper; drawings keep their scale; letters are set as letters, so that they can be searched.
 */
@NullMarked
package bandwright.dsl.export.pdf;

import org.jspecify.annotations.NullMarked;
