// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What was executed, in this session and in earlier ones. Serves any number of threads. */
public final class History {
    /** As many as are kept; the oldest go first. */
    static final int LONGEST = 5_000;

    private final Optional<HistoryFile> file;
    private final List<Entry> entries;
    private final int session;

    /**
     * A cell that was executed.
     *
     * @param session which run of a kernel, from 1
     * @param line the how manieth of the session, from 1
     * @param output what it showed, as plain text; empty for those of earlier sessions
     */
    record Entry(int session, int line, String input, String output) {}

    /** One that lasts no longer than the process. */
    public History() {
        this(Optional.empty());
    }

    /** One that goes on where the file ends. */
    History(Optional<HistoryFile> file) {
        this.file = file;
        this.entries = new ArrayList<>(file.map(HistoryFile::read).orElse(List.of()));
        this.session = entries.stream().mapToInt(Entry::session).max().orElse(0) + 1;
    }

    synchronized void add(int line, String input, String output) {
        Entry entry = new Entry(session, line, input, output);
        entries.add(entry);
        if (entries.size() > LONGEST) {
            entries.remove(0);
        }
        file.ifPresent(kept -> kept.append(entry));
    }

    synchronized List<Entry> entries() {
        return List.copyOf(entries);
    }

    int session() {
        return session;
    }
}
