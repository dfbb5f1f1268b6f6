// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

/** Judges that come by npm, into {@code target}, and the browser; a test that needs what is missing is skipped, visibly. */
public final class Npm {
    public static final Path MODULES = Path.of("target", "npm").toAbsolutePath();

    public static final Path CHROMIUM = Path.of("/usr/bin/chromium");

    /** Pinned, and each stands alone: they ask for no further packages. */
    private static final List<String> PACKAGES =
            List.of("gltf-validator@2.0.0-dev.3.10", "playwright-core@1.65.1", "axe-core@4.14.1");

    private Npm() {}

    /** Skips the test where npm or its network is missing. */
    public static void need() throws IOException, InterruptedException {
        boolean there = PACKAGES.stream()
                .allMatch(name -> Files.isDirectory(
                        MODULES.resolve("node_modules").resolve(name.substring(0, name.indexOf('@')))));
        if (there) {
            return;
        }
        Files.createDirectories(MODULES);
        List<String> command = new ArrayList<>(List.of(
                "npm", "install", "--silent", "--no-save", "--no-audit", "--no-fund", "--ignore-scripts", "--prefix"));
        command.add(MODULES.toString());
        command.addAll(PACKAGES);
        assumeTrue(run(command).isEmpty(), "npm is missing or reaches no registry");
    }

    /** Skips the test where there is no browser. */
    public static void needBrowser() {
        assumeTrue(Files.isExecutable(CHROMIUM), "there is no Chromium");
    }

    public static String script(String name) {
        return Path.of("src", "test", "javascript", name).toAbsolutePath().toString();
    }

    /** What a program says; where it cannot be started, that. */
    public static String run(List<String> command) throws InterruptedException {
        try {
            Process process =
                    new ProcessBuilder(command).redirectErrorStream(true).start();
            String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            int code = process.waitFor();
            return code == 0 || !said.isEmpty() ? said : "failed with " + code;
        } catch (IOException missing) {
            return missing.toString();
        }
    }
}
