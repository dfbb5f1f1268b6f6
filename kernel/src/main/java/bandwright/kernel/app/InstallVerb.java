// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;

import org.jspecify.annotations.Nullable;

import bandwright.kernel.install.InstallFault;
import bandwright.kernel.install.Installation;

/** Makes the kernel known to Jupyter, or takes it away. */
record InstallVerb(Terminal terminal, KernelPlace place) {

    int install(String heap) throws UsageFault {
        if (!heap.matches("[1-9][0-9]{0,2}[gG]|[1-9][0-9]{2,5}[mM]")) {
            throw new UsageFault(
                    "--heap wants an amount of memory from 100m on, such as 512m or 2g, not '" + heap + "'");
        }
        boolean windows = KernelPlace.system().startsWith("Windows");
        Path java = Path.of(System.getProperty("java.home"), "bin", windows ? "java.exe" : "java");
        try {
            Installation installation = Installation.in(place.dataFolder());
            boolean fast =
                    installation.install(java, jar(), heap, KernelPlace.system().startsWith("Linux"));
            terminal.say("installed  " + installation.folder());
            terminal.say("java       " + java);
            if (!fast) {
                terminal.say("note       this Java made no archive of classes; the kernel starts slower without");
            }
            return ExitCode.GOOD;
        } catch (InstallFault fault) {
            throw new UsageFault(fault.sentence());
        }
    }

    int uninstall() throws UsageFault {
        try {
            Installation installation = Installation.in(place.dataFolder());
            installation.uninstall();
            terminal.say("removed  " + installation.folder());
            return ExitCode.GOOD;
        } catch (InstallFault fault) {
            throw new UsageFault(fault.sentence());
        }
    }

    private static Path jar() throws UsageFault {
        @Nullable CodeSource source = InstallVerb.class.getProtectionDomain().getCodeSource();
        try {
            Path file =
                    source == null ? Path.of("") : Path.of(source.getLocation().toURI());
            if (Files.isRegularFile(file)) {
                return file;
            }
        } catch (URISyntaxException noFile) {
            // Told below, like any other way of not being a jar.
        }
        throw new UsageFault("only the packaged program can be installed: java -jar bandwright.jar install-kernel");
    }
}
