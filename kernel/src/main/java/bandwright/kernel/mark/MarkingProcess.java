// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.mark;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.TimeUnit;

import com.fasterxml.jackson.core.JsonProcessingException;

/**
 * Marks each work in a process of its own, which has so much time and memory and is then ended, whatever it does: a work cannot
 * take the others with it.
 *
 * @param program what comes after {@code java}'s switches: how this program is called, up to its verb
 * @param seconds for one work, the start of the process among them
 */
public record MarkingProcess(List<String> program, int seconds) {
    /** Harbour light, with forty stones, takes 140 MB. */
    private static final int HEAP_MB = 512;

    /** What the process ends with when memory is not enough: {@code -XX:+ExitOnOutOfMemoryError} fixes it. */
    private static final int OUT_OF_MEMORY = 3;

    /** More than {@link Marking} lets a work say. */
    private static final int LONGEST_ANSWER = 8_000_000;

    public MarkingProcess {
        program = List.copyOf(program);
    }

    /** The work's marks; a work that could not be marked has none and says why. */
    public Marked mark(Path work, Path key) throws InterruptedException {
        try {
            Process process = new ProcessBuilder(command(work, key))
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            try {
                return await(process);
            } finally {
                process.destroyForcibly();
            }
        } catch (IOException failure) {
            return Marked.not("no process could be started to mark it");
        }
    }

    private List<String> command(Path work, Path key) {
        boolean windows = System.getProperty("os.name", "").startsWith("Windows");
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", windows ? "java.exe" : "java")
                        .toString(),
                "-Xmx" + HEAP_MB + "m",
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-XX:+ExitOnOutOfMemoryError",
                "-Xlog:disable"));
        command.addAll(program);
        command.add(work.toAbsolutePath().toString());
        command.add(key.toAbsolutePath().toString());
        return command;
    }

    private Marked await(Process process) throws IOException, InterruptedException {
        process.getOutputStream().close();
        CompletableFuture<String> answer = CompletableFuture.supplyAsync(() -> read(process.getInputStream()));
        if (!process.waitFor(seconds, TimeUnit.SECONDS)) {
            return Marked.not("stopped: it took longer than " + seconds + (seconds == 1 ? " second" : " seconds"));
        }
        if (process.exitValue() == OUT_OF_MEMORY) {
            return Marked.not("stopped: it needed more than " + HEAP_MB + " MB of memory");
        }
        try {
            return MarkedJson.read(answer.join());
        } catch (JsonProcessingException | CompletionException unreadable) {
            return Marked.not("its run failed; this is a fault of ours, not of the work");
        }
    }

    private static String read(InputStream stream) {
        try (stream) {
            return new String(stream.readNBytes(LONGEST_ANSWER), StandardCharsets.UTF_8);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
