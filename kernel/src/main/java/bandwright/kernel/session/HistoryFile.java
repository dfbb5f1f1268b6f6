// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.session;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import com.fasterxml.jackson.databind.node.ObjectNode;

import bandwright.kernel.protocol.Json;
import bandwright.kernel.protocol.MalformedMessage;

/**
 * Where history outlives the kernel: a line of JSON for each cell. Several kernels may write to one file. Whatever is wrong with
 * the file or its folder, the kernel works on without.
 */
public final class HistoryFile {
    /** A larger file is cut to its last entries. */
    private static final long LARGEST_BYTES = 2_000_000;

    private static final int KEPT = 1_000;

    private final Path file;

    private HistoryFile(Path file) {
        this.file = file;
    }

    /** A history that is kept in a file, or in memory alone if there is no folder for it. */
    public static History open(Map<String, String> environment, String system) {
        return new History(folder(environment, system).map(folder -> new HistoryFile(folder.resolve("history.jsonl"))));
    }

    /** {@code BANDWRIGHT_DATA_DIR}, else the platform's folder for data of programs. */
    static Optional<Path> folder(Map<String, String> environment, String system) {
        String own = environment.getOrDefault("BANDWRIGHT_DATA_DIR", "");
        if (!own.isEmpty()) {
            return Optional.of(Path.of(own));
        }
        if (system.startsWith("Windows")) {
            return under(environment.get("APPDATA"), "bandwright");
        }
        if (system.startsWith("Mac")) {
            return under(environment.get("HOME"), "Library/Application Support/bandwright");
        }
        Optional<Path> shared = under(environment.get("XDG_DATA_HOME"), "bandwright");
        return shared.isPresent() ? shared : under(environment.get("HOME"), ".local/share/bandwright");
    }

    private static Optional<Path> under(@org.jspecify.annotations.Nullable String folder, String name) {
        return folder == null || folder.isEmpty() ? Optional.empty() : Optional.of(Path.of(folder, name));
    }

    /** All entries that can be read. */
    List<History.Entry> read() {
        List<History.Entry> entries = new ArrayList<>();
        try {
            if (!Files.isRegularFile(file)) {
                return entries;
            }
            boolean large = Files.size(file) > LARGEST_BYTES;
            new String(Files.readAllBytes(file), StandardCharsets.UTF_8)
                    .lines()
                    .forEach(line -> entry(line).ifPresent(entries::add));
            if (large) {
                List<History.Entry> kept = entries.subList(Math.max(0, entries.size() - KEPT), entries.size());
                rewrite(kept);
                return kept;
            }
            return entries.subList(Math.max(0, entries.size() - History.LONGEST), entries.size());
        } catch (IOException unreadable) {
            return entries;
        }
    }

    private static Optional<History.Entry> entry(String line) {
        try {
            ObjectNode node = Json.parse(line);
            return Optional.of(new History.Entry(
                    node.path("session").asInt(),
                    node.path("line").asInt(),
                    node.path("input").asText(),
                    ""));
        } catch (MalformedMessage damaged) {
            return Optional.empty();
        }
    }

    void append(History.Entry entry) {
        try {
            Path folder = file.toAbsolutePath().getParent();
            if (folder != null) {
                Files.createDirectories(folder);
            }
            Files.writeString(file, line(entry), StandardOpenOption.CREATE, StandardOpenOption.APPEND);
        } catch (IOException unwritable) {
            // The history of this session is in memory; that it does not outlive it is no reason to stop a cell.
            return;
        }
    }

    /** In one move, so that no other kernel ever reads half a file; what another writes in that moment is lost. */
    private void rewrite(List<History.Entry> entries) throws IOException {
        StringBuilder text = new StringBuilder();
        entries.forEach(entry -> text.append(line(entry)));
        Path whole = file.toAbsolutePath();
        Path shorter = Files.createTempFile(whole.getParent(), "history", ".part");
        try {
            Files.writeString(shorter, text.toString());
            Files.move(shorter, whole, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(shorter);
        }
    }

    private static String line(History.Entry entry) {
        ObjectNode node = Json.object()
                .put("session", entry.session())
                .put("line", entry.line())
                .put("input", entry.input());
        return Json.write(node) + "\n";
    }
}
