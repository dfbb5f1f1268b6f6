// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import java.nio.file.Path;

import bandwright.kernel.notebook.Notebook;
import bandwright.kernel.notebook.NotebookFault;
import bandwright.kernel.notebook.NotebookReader;
import bandwright.kernel.notebook.Reading;

/** What the verbs share: reading a file. */
final class Inputs {
    private Inputs() {}

    static Notebook read(Path file) throws UsageFault {
        Reading reading = NotebookReader.read(file);
        if (reading instanceof NotebookFault fault) {
            throw new UsageFault(fault.message());
        }
        return (Notebook) reading;
    }
}
