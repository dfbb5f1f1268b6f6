// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.export;

/**
 * A heading that the table of contents lists.
 *
 * @param level 2 to 6; 1 is the page's own
 * @param id unique on the page
 */
record Heading(int level, String id, String text) {}
