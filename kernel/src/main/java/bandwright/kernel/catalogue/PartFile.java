// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.catalogue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.Sweep;
import bandwright.dsl.view.Table;

/**
 * A catalogue that grows. It holds whole lines up to wherever it was stopped, so the file itself says how far the work has come; a
 * line that was being written is dropped when the work goes on.
 */
final class PartFile implements AutoCloseable {
    private static final int BLOCK = 1 << 16;
    /** More than any line of ours; a file without lines is not read whole. */
    private static final int LONGEST_LINE = 1 << 20;

    /** So much at most is lost when the machine loses its power; of a stopped program nothing is. */
    private static final long BYTES_BETWEEN_FLUSHES = 8_000_000;

    private final FileChannel channel;
    private final String header;
    private long rows;
    private long unflushed;

    private PartFile(FileChannel channel, Sweep sweep) {
        this.channel = channel;
        header = Table.csvLine(
                sweep.columns().stream().map(Table.Column::heading).toList());
    }

    /**
     * A new one, with its line of headings.
     *
     * @param over an older one, which must not be under way
     */
    static PartFile create(Path file, Sweep sweep, boolean over) throws IOException, CatalogueFault {
        StandardOpenOption how = over ? StandardOpenOption.CREATE : StandardOpenOption.CREATE_NEW;
        PartFile part =
                new PartFile(FileChannel.open(file, how, StandardOpenOption.READ, StandardOpenOption.WRITE), sweep);
        part.lock(file);
        part.channel.truncate(0);
        part.write(part.header);
        return part;
    }

    /** One that was left, set to go on after its last whole line. */
    static PartFile open(Path file, Sweep sweep) throws IOException, CatalogueFault {
        PartFile part = new PartFile(FileChannel.open(file, StandardOpenOption.READ, StandardOpenOption.WRITE), sweep);
        part.lock(file);
        long end = part.scan(sweep);
        if (end < 0) {
            part.close();
            throw new CatalogueFault(file + " does not hold the rows that this plan makes");
        }
        part.channel.truncate(end);
        part.channel.position(end);
        if (end == 0) {
            part.write(part.header);
        }
        return part;
    }

    /** Whether a file holds all rows of a catalogue and nothing else, as far as what varies in them tells. */
    static boolean isWhole(Path file, Sweep sweep) throws IOException {
        try (PartFile whole = new PartFile(FileChannel.open(file, StandardOpenOption.READ), sweep)) {
            return whole.scan(sweep) == whole.channel.size() && whole.rows == sweep.rows();
        }
    }

    /** Of two programs that write one file, none would be right. */
    private void lock(Path file) throws IOException, CatalogueFault {
        @Nullable FileLock lock;
        try {
            lock = channel.tryLock();
        } catch (OverlappingFileLockException ours) {
            lock = null;
        }
        if (lock == null) {
            channel.close();
            throw new CatalogueFault(file + " is being written by another program");
        }
    }

    /** Counts the whole lines and says where the last of them ends; -1 if one of them is not the one that stands there. */
    private long scan(Sweep sweep) throws IOException {
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        ByteBuffer block = ByteBuffer.allocate(BLOCK);
        long lines = 0;
        long end = 0;
        for (long position = 0; channel.read(block, position) > 0; position += block.limit(), block.clear()) {
            block.flip();
            for (int i = 0; i < block.limit(); i++) {
                line.write(block.get(i));
                if (block.get(i) == '\n') {
                    String text = line.toString(StandardCharsets.UTF_8);
                    if (lines > sweep.rows()
                            || !(lines == 0 ? text.equals(header) : text.startsWith(start(sweep, lines - 1)))) {
                        return -1;
                    }
                    lines++;
                    end = position + i + 1;
                    line.reset();
                } else if (line.size() > LONGEST_LINE) {
                    return -1;
                }
            }
        }
        if (lines == 0 && !header.startsWith(line.toString(StandardCharsets.UTF_8))) {
            return -1;
        }
        rows = Math.max(0, lines - 1);
        return end;
    }

    private static String start(Sweep sweep, long row) {
        String cells = Table.csvLine(sweep.place(row));
        return cells.substring(0, cells.length() - 1) + ",";
    }

    /**
     * SHA-256 of what it holds, in lower-case hexadecimal digits; read by its own channel, for to open and close the file once more
     * would give up the lock.
     */
    String sha256() throws IOException {
        MessageDigest digest = Digests.digest();
        ByteBuffer block = ByteBuffer.allocate(BLOCK);
        for (long position = 0; channel.read(block, position) > 0; position += block.limit(), block.clear()) {
            digest.update(block.flip());
            block.position(block.limit());
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    /** How many rows it holds. */
    long rows() {
        return rows;
    }

    void append(List<String> lines) throws IOException {
        write(String.join("", lines));
        rows += lines.size();
    }

    private void write(String text) throws IOException {
        ByteBuffer bytes = StandardCharsets.UTF_8.encode(text);
        unflushed += bytes.remaining();
        while (bytes.hasRemaining()) {
            channel.write(bytes);
        }
        if (unflushed > BYTES_BETWEEN_FLUSHES) {
            flush();
        }
    }

    /** Puts it on the disk itself. */
    void flush() throws IOException {
        channel.force(true);
        unflushed = 0;
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
