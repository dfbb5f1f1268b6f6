// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.desk;

import java.util.List;
import java.util.Map;
import java.util.Set;

import org.jspecify.annotations.Nullable;

import bandwright.kernel.notebook.CellResult;
import bandwright.kernel.notebook.Notebook;
import bandwright.kernel.notebook.NotebookCell;

/** The file of an open notebook, as it was read or written here last, and what stands in it besides cells. Other programs may write it too. */
final class NotebookOnDisk {
    private final String name;
    private final NotebookFolder folder;
    private Notebook kept;
    private Notebook bare;
    private String text;
    private NotebookFolder.@Nullable Other other;

    NotebookOnDisk(String name, NotebookFolder folder) throws DeskFault {
        this.name = name;
        this.folder = folder;
        text = folder.text(name);
        kept = folder.read(name);
        bare = kept.withoutResults();
    }

    /** What the file holds, letter by letter. */
    String text() {
        return text;
    }

    Notebook notebook() {
        return kept;
    }

    /** What is typed takes the place of its cells; the file stays. */
    void begin(List<NotebookCell> cells) {
        kept = kept.withCells(cells);
        bare = kept.withoutResults();
    }

    boolean isOneText() {
        return kept.isOneText();
    }

    /** With these cells, without results. */
    Notebook with(List<NotebookCell> cells) {
        return bare.withCells(cells);
    }

    /** Whether nobody else has written the file. */
    boolean isAsLeft() throws DeskFault {
        return folder.holds(name, text);
    }

    /** Reads again what another program has written; nothing changes if it cannot be read. */
    void readAgain() throws DeskFault {
        String now = folder.text(name);
        Notebook theirs = folder.read(name);
        text = now;
        kept = theirs;
        bare = theirs.withoutResults();
    }

    /**
     * Writes a text beside the file.
     *
     * @return the name of the file it is in
     */
    String keepBeside(List<NotebookCell> cells) throws DeskFault {
        other = folder.keepOther(name, kept.withCells(cells), null);
        return other.name();
    }

    /** @throws DeskFault if the file is not as it was left; then this stands beside it */
    void save(List<NotebookCell> cells, Map<String, CellResult> holding, Set<String> silent) throws DeskFault {
        Notebook now = kept.withCells(cells).withResults(holding).withoutResults(silent);
        if (!isAsLeft()) {
            other = folder.keepOther(name, now, other);
            throw new DeskFault(name + " was changed by another program; what this page has is in " + other.name());
        }
        text = folder.save(name, now);
        kept = now;
        bare = now.withoutResults();
    }
}
