// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.install;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * Classes as Java had them in memory after a rehearsal, in a file: the next start need not read and check them again. Its name
 * holds the hash of our jar, so that no jar meets another's archive; Java itself refuses one that another Java made. Never needed:
 * without it the kernel starts slower.
 */
final class Archive {
    private static final int DIGITS = 16;
    private static final long PATIENCE_S = 120;

    private Archive() {}

    static Path of(Path jar) throws IOException {
        return jar.resolveSibling("classes-" + hash(jar) + ".jsa");
    }

    private static String hash(Path jar) throws IOException {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(jar));
            return HexFormat.of().formatHex(digest).substring(0, DIGITS);
        } catch (NoSuchAlgorithmException failure) {
            throw new IllegalStateException("every Java has SHA-256", failure);
        }
    }

    /** Lets a Java rehearse and write the archive. Whether there is one then. */
    static boolean make(KernelSpec spec) {
        List<String> command = new ArrayList<>(spec.command());
        command.add(1, "-XX:ArchiveClassesAtExit=" + spec.archive());
        command.add("rehearse");
        ProcessBuilder builder = new ProcessBuilder(command)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD);
        builder.environment().put("LC_ALL", "C.UTF-8");
        try {
            Process process = builder.start();
            if (!process.waitFor(PATIENCE_S, TimeUnit.SECONDS)) {
                process.destroyForcibly();
            }
        } catch (IOException failure) {
            return false;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return false;
        }
        return Files.isRegularFile(spec.archive());
    }
}
