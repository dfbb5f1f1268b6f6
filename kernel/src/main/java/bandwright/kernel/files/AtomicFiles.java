// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;

/**
 * Writes files so that a reader sees the old one or the new one, never half of one: each goes into a file beside its
 * target, and only when all are written are they moved over.
 */
public final class AtomicFiles {
    private AtomicFiles() {}

    /**
     * Writes texts, all or, as far as the file system allows, none. Missing folders are made.
     *
     * @throws IOException whose message is a sentence that names the file
     */
    public static void write(Map<Path, String> texts) throws IOException {
        Map<Path, byte[]> files = new LinkedHashMap<>();
        texts.forEach((file, text) -> files.put(file, text.getBytes(StandardCharsets.UTF_8)));
        writeBytes(files);
    }

    /** As {@link #write}, of files that are not all texts. */
    public static void writeBytes(Map<Path, byte[]> files) throws IOException {
        Map<Path, Path> staged = new LinkedHashMap<>();
        Path current = Path.of("");
        try {
            for (Map.Entry<Path, byte[]> entry : files.entrySet()) {
                current = entry.getKey();
                // A link keeps pointing where it points: the file behind it is replaced.
                Path target = Files.exists(current) ? current.toRealPath() : current.toAbsolutePath();
                Path part = beside(target);
                staged.put(target, part);
                stage(target, part, entry.getValue());
            }
            for (Map.Entry<Path, Path> entry : staged.entrySet()) {
                current = entry.getKey();
                move(entry.getValue(), entry.getKey());
            }
        } catch (IOException failure) {
            throw new IOException(current + " cannot be written", failure);
        } finally {
            staged.values().forEach(AtomicFiles::forget);
        }
    }

    private static Path beside(Path target) {
        return target.resolveSibling("." + target.getFileName() + "." + UUID.randomUUID() + ".part");
    }

    private static void stage(Path target, Path part, byte[] content) throws IOException {
        Path folder = target.getParent();
        if (folder != null) {
            Files.createDirectories(folder);
        }
        // New, by a name that nobody can have guessed: a link laid there would lead elsewhere.
        Files.write(part, content, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        PosixFileAttributeView rights = Files.getFileAttributeView(part, PosixFileAttributeView.class);
        if (rights != null && Files.exists(target)) {
            rights.setPermissions(Files.getPosixFilePermissions(target));
        }
    }

    private static void move(Path part, Path target) throws IOException {
        if (Files.isDirectory(target)) {
            throw new IOException(target + " is a folder");
        }
        try {
            Files.move(part, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException plainOnly) {
            Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static void forget(Path part) {
        try {
            Files.deleteIfExists(part);
        } catch (IOException leftBehind) {
            // The file is small and hidden, and the trouble that matters has been told already.
            return;
        }
    }
}
