// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.cell.java;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.source.Span;

/** The words for a cell that wanted more memory than there is. */
final class OutOfMemory {
    private static final long MEGABYTE = 1024 * 1024;

    private OutOfMemory() {}

    static Diagnostic told(SourceText cell) {
        long most = Runtime.getRuntime().maxMemory() / MEGABYTE;
        return JavaErrors.error(
                "out-of-memory",
                "the cell wanted more memory than the " + most + " MB there are; the design is as it was before it",
                cell.place(new Span(0, cell.lineSpan(1).end())),
                null,
                "What its variables held is let go of. More memory: install-kernel --heap 2g, or java -Xmx2g for run and measure.");
    }
}
