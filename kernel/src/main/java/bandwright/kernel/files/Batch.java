// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Files that are written all or none. Each is staged beside its place and forced to the disk; only then they are put there, one
 * after the other. Unless the batch is kept, closing it takes back what was put: new files go, old ones return.
 */
final class Batch implements AutoCloseable {
    private static final AtomicLong COUNT = new AtomicLong();

    private final Map<Path, Path> staged = new LinkedHashMap<>();
    private final Map<Path, Path> old = new LinkedHashMap<>();
    private final Deque<Path> put = new ArrayDeque<>();
    private boolean kept;

    /** Writes the file beside its place. */
    void stage(Writing writing) throws IOException {
        Path target = writing.target();
        if (Files.exists(target) && !Files.isWritable(target)) {
            throw new java.nio.file.AccessDeniedException(target.toString());
        }
        Path part = beside(target, "part");
        staged.put(target, part);
        try (FileChannel channel = FileChannel.open(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            ByteBuffer bytes = ByteBuffer.wrap(writing.file().bytes());
            while (bytes.hasRemaining()) {
                channel.write(bytes);
            }
            channel.force(true);
        }
        PosixFileAttributeView rights = Files.getFileAttributeView(part, PosixFileAttributeView.class);
        if (rights != null && Files.exists(target)) {
            rights.setPermissions(Files.getPosixFilePermissions(target));
        }
    }

    /** Puts a staged file where it belongs. */
    void put(Writing writing) throws IOException {
        Path target = writing.target();
        Path part = staged.getOrDefault(target, target);
        if (writing.export().replace()) {
            if (Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
                Path saved = beside(target, "old");
                old.put(target, saved);
                link(saved, target);
            }
            move(part, target);
        } else {
            try {
                // Unlike a move, this fails if somebody else has put a file there meanwhile.
                link(target, part);
            } catch (FileAlreadyExistsException taken) {
                if (!holdsSame(target, part)) {
                    throw taken;
                }
                return;
            }
        }
        put.push(target);
    }

    void keep() {
        kept = true;
    }

    private static Path beside(Path target, String ending) {
        return target.resolveSibling("." + target.getFileName() + "."
                + ProcessHandle.current().pid() + "." + COUNT.incrementAndGet() + "." + ending);
    }

    /** A second name for a file, or, where the disk knows none, a copy. */
    private static void link(Path link, Path existing) throws IOException {
        try {
            Files.createLink(link, existing);
        } catch (FileAlreadyExistsException taken) {
            throw taken;
        } catch (UnsupportedOperationException | IOException noLinks) {
            Files.copy(existing, link, StandardCopyOption.COPY_ATTRIBUTES);
        }
    }

    private static void move(Path part, Path target) throws IOException {
        try {
            Files.move(part, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException plainOnly) {
            Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    @Override
    public void close() {
        while (!kept && !put.isEmpty()) {
            takeBack(put.pop());
        }
        staged.values().forEach(Batch::forget);
        old.values().forEach(Batch::forget);
    }

    private static boolean holdsSame(Path target, Path part) throws IOException {
        return Files.isRegularFile(target) && Files.mismatch(target, part) < 0;
    }

    private void takeBack(Path target) {
        Path saved = old.remove(target);
        Path part = staged.getOrDefault(target, target);
        try {
            if (saved != null) {
                move(saved, target);
            } else if (!Files.exists(part) || holdsSame(target, part)) {
                // Else somebody has put another file there meanwhile, which is theirs.
                Files.deleteIfExists(target);
            }
        } catch (IOException leftBehind) {
            // The trouble that matters is told already.
            return;
        }
    }

    private static void forget(Path helper) {
        try {
            Files.deleteIfExists(helper);
        } catch (IOException leftBehind) {
            // Hidden, and nobody's work.
            return;
        }
    }
}
