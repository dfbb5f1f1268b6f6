// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.catalogue;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.LongStream;

import bandwright.dsl.Sweep;
import bandwright.dsl.view.Table;
import bandwright.kernel.files.AtomicFiles;

/**
 * A catalogue on the disk. While it is under way its rows lie in {@code NAME.csv.part}; {@code NAME.csv.json} beside it says what it is
 * a catalogue of. When all rows are there it gets its name, and the side file the sum of its bytes.
 */
public final class Catalogue {
    /** Leaves the disk some room for everybody else. */
    private static final double ROOM = 1.05;

    private final Sweep sweep;
    private final Heading heading;
    private final Path file;
    private final Path part;
    private final Path side;

    /** Hears how far it has come, after each stretch. */
    @FunctionalInterface
    public interface Heard {
        void worked(long rows, long total);
    }

    public Catalogue(Sweep sweep, Heading heading, Path file) {
        this.sweep = sweep;
        this.heading = heading;
        this.file = file;
        part = file.resolveSibling(file.getFileName() + ".part");
        side = file.resolveSibling(file.getFileName() + ".json");
    }

    /**
     * Writes it whole.
     *
     * @param replace whether an older one, finished or not, may go
     * @throws CatalogueFault before any work if it cannot be begun; if it cannot be finished, what is there stays to be gone on with
     */
    public void write(boolean replace, int threads, Heard heard) throws CatalogueFault {
        if (Files.isDirectory(file)) {
            throw new CatalogueFault(file + " is a folder; a file is to be written there");
        }
        for (Path other : List.of(part, side)) {
            if (Files.exists(other) && !Files.isRegularFile(other)) {
                throw new CatalogueFault(other + " is no file, and one is to be written there");
            }
        }
        if (!replace && Files.exists(part)) {
            throw new CatalogueFault(part + " is there, unfinished; say "
                    + (Files.exists(side) ? "--resume to go on with it, or " : "") + "--replace to begin anew");
        } else if (!replace && (Files.exists(file) || Files.exists(side))) {
            throw new CatalogueFault(
                    (Files.exists(file) ? file : side) + " is there already; say --replace if it may go");
        }
        checkRoom(0);
        PartFile opened;
        try {
            Path folder = file.toAbsolutePath().getParent();
            if (folder != null) {
                Files.createDirectories(folder);
            }
            // The lock first: whoever else writes this catalogue must not find its side file changed.
            opened = PartFile.create(part, sweep, replace);
        } catch (IOException failure) {
            throw new CatalogueFault(part + " cannot be written" + reason(failure), failure);
        }
        try {
            // Gone before the side file speaks of other rows than it holds.
            Files.deleteIfExists(file);
            AtomicFiles.writeBytes(Map.of(side, heading.begun(sweep)));
        } catch (IOException failure) {
            close(opened);
            throw new CatalogueFault(file + " cannot be written" + reason(failure), failure);
        }
        fill(opened, threads, heard);
    }

    private static void close(PartFile opened) {
        try {
            opened.close();
        } catch (IOException again) {
            // The trouble that matters is being told.
            return;
        }
    }

    /**
     * Goes on where it was stopped; one that is finished already is left as it is.
     *
     * @throws CatalogueFault as {@link #write}; and if there is nothing to go on with, or it is a catalogue of something else
     */
    public void resume(int threads, Heard heard) throws CatalogueFault {
        boolean finished = Files.exists(file) && !Files.exists(part);
        if (!(finished || Files.exists(part))) {
            throw new CatalogueFault("there is nothing to go on with: no " + part);
        } else if (!Files.exists(side)) {
            throw new CatalogueFault("nothing says what " + (finished ? file : part) + " is of: no " + side
                    + "; say --replace to begin anew");
        }
        try {
            byte[] told = Files.readAllBytes(side);
            byte[] whole = finished ? heading.finished(sweep, Digests.sha256(file)) : told;
            boolean begun = Arrays.equals(told, heading.begun(sweep));
            boolean ours = finished ? Arrays.equals(told, whole) || (begun && PartFile.isWhole(file, sweep)) : begun;
            if (!ours) {
                throw new CatalogueFault((finished ? file : part)
                        + " is a catalogue of something else: the design, the plan or the program has changed; " + side
                        + " says of what. Say --replace to begin anew");
            } else if (finished) {
                // Stopped between its last two steps it has its name already, and the side file does not know yet.
                AtomicFiles.writeBytes(Map.of(side, whole));
                heard.worked(sweep.rows(), sweep.rows());
                return;
            }
            PartFile opened = PartFile.open(part, sweep);
            checkRoom(opened.rows());
            fill(opened, threads, heard);
        } catch (IOException failure) {
            throw new CatalogueFault(part + " cannot be read" + reason(failure), failure);
        }
    }

    private void fill(PartFile opened, int threads, Heard heard) throws CatalogueFault {
        try (opened) {
            try {
                heard.worked(opened.rows(), sweep.rows());
                Crew.work(sweep, opened.rows(), threads, lines -> {
                    append(opened, lines);
                    heard.worked(opened.rows(), sweep.rows());
                });
                opened.flush();
            } catch (CatalogueFault fault) {
                throw new CatalogueFault(
                        fault.getMessage() + "; " + opened.rows() + " of " + sweep.rows() + " rows are in " + part
                                + ", say --resume to go on",
                        fault);
            }
            byte[] told = heading.finished(sweep, opened.sha256());
            Files.move(part, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
            AtomicFiles.writeBytes(Map.of(side, told));
        } catch (IOException failure) {
            throw new CatalogueFault(file + " cannot be written" + reason(failure), failure);
        }
    }

    private void append(PartFile opened, List<String> lines) throws CatalogueFault {
        try {
            opened.append(lines);
        } catch (IOException failure) {
            throw new CatalogueFault(part + " cannot be written" + reason(failure), failure);
        }
    }

    /** Asks the disk before hours of work whether their fruit will fit: rows are about as long as the first, the middle and the last. */
    private void checkRoom(long done) throws CatalogueFault {
        long usable;
        try {
            Path folder = file.toAbsolutePath().getParent();
            while (folder != null && !Files.exists(folder)) {
                folder = folder.getParent();
            }
            usable =
                    folder == null ? Long.MAX_VALUE : Files.getFileStore(folder).getUsableSpace();
        } catch (IOException unknown) {
            return;
        }
        double length = LongStream.of(0, sweep.rows() / 2, sweep.rows() - 1)
                .map(row -> Table.csvLine(sweep.row(row)).length())
                .average()
                .orElseThrow();
        double wanted = ROOM * length * (double) (sweep.rows() - done);
        if (wanted > (double) usable) {
            throw new CatalogueFault("the disk has room for " + size((double) usable) + ", and " + (sweep.rows() - done)
                    + " rows take about " + size(wanted));
        }
    }

    private static String size(double bytes) {
        return bytes < 1e9
                ? String.format(Locale.ROOT, "%.3f MB", bytes / 1e6)
                : String.format(Locale.ROOT, "%.1f GB", bytes / 1e9);
    }

    private static String reason(IOException failure) {
        if (failure instanceof FileAlreadyExistsException) {
            return ": another program has begun it";
        }
        String reason = failure instanceof FileSystemException known ? known.getReason() : failure.getMessage();
        return reason == null ? "" : ": " + reason;
    }
}
