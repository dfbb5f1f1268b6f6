// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.cell.java;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.source.Place;

/** The words for a cell that wanted more memory than there is. */
final class OutOfMemory {
    private static final long MEGABYTE = 1024 * 1024;

    private OutOfMemory() {}

    /** @param place the line that ran, if any did */
    static Diagnostic told(@Nullable Place place) {
        long most = Runtime.getRuntime().maxMemory() / MEGABYTE;
        return JavaErrors.error(
                "out-of-memory",
                "the cell wanted more memory than the " + most + " MB there are; the design is as it was before it",
                place,
                null,
                "What its variables held is let go of. More memory: install-kernel --heap 2g, or java -Xmx2g for run and measure.");
    }
}
