// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.install;

import java.nio.file.Path;
import java.util.Map;

/** Where Jupyter looks for kernels. Source: Jupyter documentation, "Common directories and file locations", data files. */
public final class DataFolder {
    private static final String SHARED = "share/jupyter";

    private DataFolder() {}

    /** The user's own: {@code JUPYTER_DATA_DIR}, else the platform's. */
    public static Path ofUser(Map<String, String> environment, String system) throws InstallFault {
        String given = environment.getOrDefault("JUPYTER_DATA_DIR", "");
        if (!given.isEmpty()) {
            return Path.of(given);
        }
        if (system.startsWith("Windows")) {
            return Path.of(variable(environment, "APPDATA"), "jupyter");
        }
        String home = variable(environment, "HOME");
        if (system.startsWith("Mac")) {
            return Path.of(home, "Library", "Jupyter");
        }
        String shared = environment.getOrDefault("XDG_DATA_HOME", "");
        return shared.isEmpty() ? Path.of(home, ".local", SHARED) : Path.of(shared, "jupyter");
    }

    /** That of a Python, or of anything else that lives under a folder. */
    public static Path under(Path prefix) {
        return prefix.resolve(SHARED);
    }

    /** That of the Python environment that is active in this shell. */
    public static Path ofActiveEnvironment(Map<String, String> environment) throws InstallFault {
        for (String name : new String[] {"VIRTUAL_ENV", "CONDA_PREFIX"}) {
            String prefix = environment.getOrDefault(name, "");
            if (!prefix.isEmpty()) {
                return under(Path.of(prefix));
            }
        }
        throw new InstallFault("no Python environment is active here; activate one, or say --prefix DIR");
    }

    private static String variable(Map<String, String> environment, String name) throws InstallFault {
        String value = environment.getOrDefault(name, "");
        if (value.isEmpty()) {
            throw new InstallFault(
                    "there is no " + name + " in the environment; say where with JUPYTER_DATA_DIR or --prefix DIR");
        }
        return value;
    }
}
