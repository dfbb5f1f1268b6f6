// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.catalogue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
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

    /** A new one, with its line of headings. */
    static PartFile create(Path file, Sweep sweep) throws IOException, CatalogueFault {
        PartFile part =
                new PartFile(FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE), sweep);
        part.lock(file);
        part.write(part.header);
        return part;
    }

    /** One that was left, set to go on after its last whole line. */
    static PartFile open(Path file, Sweep sweep) throws IOException, CatalogueFault {
        PartFile part = new PartFile(FileChannel.open(file, StandardOpenOption.READ, StandardOpenOption.WRITE), sweep);
        part.lock(file);
        part.find(file, sweep);
        return part;
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

    private void find(Path file, Sweep sweep) throws IOException, CatalogueFault {
        long lines = 0;
        long lastStart = 0;
        long end = 0;
        long position = 0;
        ByteBuffer block = ByteBuffer.allocate(BLOCK);
        while (channel.read(block, position) > 0) {
            block.flip();
            for (int i = 0; i < block.limit(); i++) {
                if (block.get(i) == '\n') {
                    lines++;
                    lastStart = end;
                    end = position + i + 1;
                }
            }
            position += block.limit();
            block.clear();
        }
        channel.truncate(end);
        channel.position(end);
        if (lines == 0) {
            write(header);
            return;
        }
        rows = lines - 1;
        boolean ours = text(0, header.length() * 4L).startsWith(header)
                && rows <= sweep.rows()
                && (rows == 0 || text(lastStart, end - lastStart).startsWith(start(sweep, rows - 1)));
        if (!ours) {
            channel.close();
            throw new CatalogueFault(file + " does not hold the rows that this plan makes");
        }
    }

    private static String start(Sweep sweep, long row) {
        String cells = Table.csvLine(sweep.place(row));
        return cells.substring(0, cells.length() - 1) + ",";
    }

    private String text(long from, long length) throws IOException {
        ByteBuffer bytes = ByteBuffer.allocate((int) Math.min(length, channel.size() - from));
        long position = from;
        while (bytes.hasRemaining()) {
            position += channel.read(bytes, position);
        }
        return StandardCharsets.UTF_8.decode(bytes.flip()).toString();
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
