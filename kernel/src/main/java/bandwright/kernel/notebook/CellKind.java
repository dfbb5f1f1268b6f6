// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.notebook;

import java.util.Locale;
import java.util.Optional;

/** What a cell holds. */
public enum CellKind {
    CODE,
    MARKDOWN,
    /** Text for other programs, passed through. */
    RAW;

    /** The word the file format uses. */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Optional<CellKind> of(String word) {
        for (CellKind kind : values()) {
            if (kind.word().equals(word)) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }
}
