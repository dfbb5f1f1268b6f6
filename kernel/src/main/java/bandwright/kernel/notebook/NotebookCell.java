// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.notebook;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/**
 * A cell, as a front end shows it.
 *
 * @param id unique in its notebook, 1 to 64 letters, digits, hyphens and underscores
 * @param tags the words a person marked it with
 * @param attachments pictures kept with the cell: their names and their {@code data:} addresses
 */
public record NotebookCell(String id, CellKind kind, String source, Set<String> tags, Map<String, String> attachments) {
    private static final String SKIP = "skip-execution";

    public NotebookCell {
        tags = Set.copyOf(tags);
        attachments = Collections.unmodifiableMap(new LinkedHashMap<>(attachments));
    }

    /** Whether running the notebook runs this cell: code, not blank, and not tagged {@code skip-execution}. */
    public boolean runs() {
        return kind == CellKind.CODE && !source.isBlank() && !tags.contains(SKIP);
    }
}
