// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export.pdf;

import java.util.List;

/**
 * Pages before they are laid out.
 *
 * @param title the first line, and what readers call the file
 * @param foot at the foot of every page, before its number
 * @param number tells this document from others; the same for the same content
 */
public record PaperDocument(String title, String foot, long number, Paper paper, List<PageItem> items) {
    public PaperDocument {
        items = List.copyOf(items);
    }
}
