// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import bandwright.kernel.cell.CellLanguages;
import bandwright.kernel.cell.java.JavaCells;
import bandwright.kernel.files.ExportFolder;
import bandwright.kernel.protocol.Connection;
import bandwright.kernel.protocol.ConnectionFault;
import bandwright.kernel.session.HistoryFile;
import bandwright.kernel.session.Kernel;
import bandwright.kernel.session.ParentWatch;

/** Serves Jupyter until it says to end, or is gone. */
record KernelVerb(Terminal terminal, Path connectionFile) {

    int run() throws UsageFault {
        Connection connection = connection();
        var history = HistoryFile.open(System.getenv(), System.getProperty("os.name", ""));
        // Jupyter starts a kernel in the folder of its notebook.
        ExportFolder folder = new ExportFolder(Path.of(""));
        try (CellLanguages languages = new CellLanguages(List.of(new JavaCells()));
                Kernel kernel = Kernel.start(connection, languages, history, Map.of(), folder, this::log)) {
            ParentWatch.start(kernel::end);
            kernel.awaitEnd();
        } catch (ConnectionFault fault) {
            throw new UsageFault(fault.sentence());
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
        return ExitCode.GOOD;
    }

    private Connection connection() throws UsageFault {
        try {
            return Connection.read(Files.readString(connectionFile));
        } catch (IOException failure) {
            throw new UsageFault("the connection file " + connectionFile + " cannot be read");
        } catch (ConnectionFault fault) {
            throw new UsageFault(fault.sentence());
        }
    }

    private void log(String line) {
        terminal.complain("bandwright kernel: " + line);
    }
}
