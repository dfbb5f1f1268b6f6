// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

/** Programs of the system that read our files; a test that needs one is skipped, visibly, where it is missing. */
public final class Tool {
    private static final Path HEADERS = Path.of("/usr/include/lib3mf");

    private Tool() {}

    /** What a program says, on both of its channels. */
    public static String run(List<String> command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        return said;
    }

    /** Skips the test if a program is not there. */
    public static void need(String program, String asked) throws InterruptedException {
        try {
            run(List.of(program, asked));
        } catch (IOException missing) {
            assumeTrue(false, program + " is not installed");
        }
    }

    /** Our reader of 3MF files, made from its source with lib3mf. */
    public static Path reader3mf(Path folder) throws IOException, InterruptedException {
        need("g++", "--version");
        Path reader = folder.resolve("read-3mf");
        assumeTrue(Files.isDirectory(HEADERS), "lib3mf-dev is not installed");
        String said = run(
                List.of("g++", "-O1", "-o", reader.toString(), "src/test/cpp/read-3mf.cpp", "-I" + HEADERS, "-l3MF"));
        if (!said.isBlank()) {
            throw new IllegalStateException(said);
        }
        return reader;
    }
}
