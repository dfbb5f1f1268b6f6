// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.design.host;

import java.nio.file.Path;
import java.util.Optional;

import org.jspecify.annotations.Nullable;

import bandwright.design.Design;

/** What a running cell reaches through {@link bandwright.design.Cell}. */
public interface Host {
    /** The design as the cell sees it. */
    Design design();

    /** Shows a value at once. */
    void display(@Nullable Object value);

    /**
     * Asks the user for a line.
     *
     * @return nothing if nobody can be asked
     */
    Optional<String> ask(String prompt, boolean hidden);

    /** Makes the classes of a jar, or of a folder of classes, known to what is compiled from now on. */
    void jar(Path file);
}
