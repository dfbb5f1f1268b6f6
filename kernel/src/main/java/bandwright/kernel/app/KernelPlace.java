// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import java.nio.file.Path;
import java.util.Map;

import org.jspecify.annotations.Nullable;

import picocli.CommandLine.Option;

import bandwright.kernel.install.DataFolder;
import bandwright.kernel.install.InstallFault;

/** For whom a kernel is installed; picocli fills it in. */
final class KernelPlace {
    @Option(names = "--user", description = "For you alone; this is what happens without any of these.")
    private boolean user;

    @Option(names = "--prefix", paramLabel = "DIR", description = "Under DIR/share/jupyter.")
    private @Nullable Path prefix;

    @Option(names = "--sys-prefix", description = "For the Python environment that is active in this shell.")
    private boolean activeEnvironment;

    Path dataFolder() throws InstallFault {
        Map<String, String> environment = System.getenv();
        if (prefix != null) {
            return DataFolder.under(prefix);
        }
        return activeEnvironment && !user
                ? DataFolder.ofActiveEnvironment(environment)
                : DataFolder.ofUser(environment, system());
    }

    static String system() {
        return System.getProperty("os.name", "");
    }
}
