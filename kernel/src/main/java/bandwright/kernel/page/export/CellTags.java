// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.export;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;

import bandwright.kernel.notebook.NotebookCell;

/** The tags by which a notebook is both the students' and the teacher's. */
public final class CellTags {
    private static final String SOLUTION = "solution";
    private static final String TEACHER = "teacher";

    /** Cells with one of these are not handed out with the questions. */
    public static final Set<String> KEPT_BACK = Set.of(SOLUTION, TEACHER);

    private CellTags() {}

    /** How a reader is told; nothing for a cell that is for everyone. */
    static Optional<String> words(NotebookCell cell) {
        if (has(cell, TEACHER)) {
            return Optional.of("For the teacher");
        }
        return has(cell, SOLUTION) ? Optional.of("Solution") : Optional.empty();
    }

    /** In large or small letters: who tags by hand means the same. */
    private static boolean has(NotebookCell cell, String tag) {
        return cell.tags().stream()
                .anyMatch(each -> each.strip().toLowerCase(Locale.ROOT).equals(tag));
    }
}
