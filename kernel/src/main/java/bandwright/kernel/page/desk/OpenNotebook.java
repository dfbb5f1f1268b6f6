// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.Outcome;
import bandwright.kernel.cell.CellLanguages;
import bandwright.kernel.cell.java.JavaCells;
import bandwright.kernel.display.Displays;
import bandwright.kernel.files.ExportFolder;
import bandwright.kernel.notebook.CellKind;
import bandwright.kernel.notebook.CellResult;
import bandwright.kernel.notebook.Notebook;
import bandwright.kernel.notebook.NotebookCell;
import bandwright.kernel.notebook.Output;
import bandwright.kernel.run.OutputsOfCell;

/**
 * A notebook that pages work at. It is one, however many pages show it: each cell has a number that grows with every change, a page says which one it
 * has changed, and where two have changed the same text both texts stay.
 *
 * <p>All but {@link #stop} for one thread at a time, the one that holds the notebook's {@link #lock()}.
 */
final class OpenNotebook implements AutoCloseable {
    private static final String OTHER = "what another page made of this cell";

    private final String name;
    private final NotebookFolder folder;
    private final CellLanguages languages = new CellLanguages(List.of(new JavaCells()));
    private final LiveDesign design = new LiveDesign(languages);
    private final List<NotebookCell> cells;
    private final Map<String, Integer> revisions = new HashMap<>();
    private final Map<String, CellResult> results = new LinkedHashMap<>();
    private final Map<String, String> html = new HashMap<>();
    private final Object lock = new Object();
    private final boolean recovered;
    private Notebook kept;
    private String disk;
    private int fresh;
    private int count;
    private final Object turn = new Object();
    private @Nullable Thread working;
    private boolean program;
    private boolean dirty;

    OpenNotebook(String name, NotebookFolder folder) throws DeskFault {
        this.name = name;
        this.folder = folder;
        disk = folder.text(name);
        Notebook saved = folder.read(name);
        Notebook draft = folder.draft(name).orElse(null);
        dirty = draft != null;
        recovered = draft != null && !draft.json().equals(saved.json());
        kept = draft == null ? saved : saved.withCells(draft.cells());
        cells = new ArrayList<>(kept.cells());
        design.follow(cells);
    }

    Object lock() {
        return lock;
    }

    String name() {
        return name;
    }

    /** Whether something typed was found that had not been put away. */
    boolean recovered() {
        return recovered;
    }

    /** Whether it is one text and no notebook. */
    boolean isOneText() {
        return kept.isOneText();
    }

    List<NotebookCell> cells() {
        return List.copyOf(cells);
    }

    LiveDesign design() {
        return design;
    }

    int revision(String id) {
        return revisions.getOrDefault(id, 0);
    }

    private int place(String id) throws DeskFault {
        for (int i = 0; i < cells.size(); i++) {
            if (cells.get(i).id().equals(id)) {
                return i;
            }
        }
        throw new DeskFault("this cell is gone; another page has taken it away");
    }

    private void put(int at, NotebookCell cell) {
        cells.set(at, cell);
        revisions.merge(cell.id(), 1, Integer::sum);
    }

    /**
     * A page has changed a cell's text.
     *
     * @param base the number the cell had when the page last knew it
     * @return the id of a new cell with the page's text, where another page had changed the cell too; nothing if all is well
     */
    @Nullable
    String type(String id, int base, String source) throws DeskFault {
        int at = place(id);
        NotebookCell cell = cells.get(at);
        if (cell.source().equals(source)) {
            return null;
        }
        if (base != revision(id) && isOneText()) {
            // One text has no room for another: it gets a file of its own.
            throw new DeskFault(
                    "another page has changed this text; yours is kept in " + folder.keepOther(name, source));
        }
        if (base != revision(id)) {
            NotebookCell other =
                    new NotebookCell(freshId(), CellKind.RAW, "# " + OTHER + "\n" + source, Set.of(), Map.of());
            cells.add(at + 1, other);
            return other.id();
        }
        put(at, new NotebookCell(id, cell.kind(), source, cell.tags(), cell.attachments()));
        return null;
    }

    /** @param after the cell it comes after; the first place of all if absent */
    String insert(CellKind kind, String source, @Nullable String after) throws DeskFault {
        if (isOneText()) {
            throw new DeskFault("a .ring file is one text; save it as a notebook to have several cells");
        }
        NotebookCell cell = new NotebookCell(freshId(), kind, source, Set.of(), Map.of());
        cells.add(after == null ? 0 : place(after) + 1, cell);
        return cell.id();
    }

    void remove(String id) throws DeskFault {
        if (cells.size() == 1) {
            throw new DeskFault("a notebook has at least one cell");
        }
        cells.remove(place(id));
        results.remove(id);
        html.remove(id);
    }

    /** @param by how many places, downwards if positive */
    void move(String id, int by) throws DeskFault {
        int at = place(id);
        int to = Math.max(0, Math.min(cells.size() - 1, at + by));
        cells.add(to, cells.remove(at));
    }

    void turnInto(String id, CellKind kind) throws DeskFault {
        int at = place(id);
        NotebookCell cell = cells.get(at);
        put(at, new NotebookCell(id, kind, cell.source(), cell.tags(), cell.attachments()));
    }

    private String freshId() {
        String id;
        do {
            fresh++;
            id = "new-" + fresh;
        } while (cells.stream().map(NotebookCell::id).anyMatch(id::equals));
        return id;
    }

    /** After changes: the design follows, and what was typed is safe. */
    void changed() throws DeskFault {
        dirty = true;
        folder.keep(name, kept.withCells(cells));
        design.follow(cells);
    }

    /** Runs a cell; its exports go into the folder. */
    Ran answer(String id) throws DeskFault {
        place(id);
        OutputsOfCell shown = new OutputsOfCell();
        begin(id);
        try {
            Outcome outcome = design.answer(id, shown.console((done, of) -> {}), new ExportFolder(folder.path()));
            count++;
            dirty = true;
            List<Output> outputs = new ArrayList<>(shown.outputs());
            outputs.addAll(Displays.outputs(outcome.diagnostics(), outcome.answers()));
            results.put(id, new CellResult(count, outputs));
            return new Ran(outcome, shown);
        } finally {
            end();
        }
    }

    /** What a cell has shown to a page, as the page had it. */
    Optional<String> shown(String id) {
        return Optional.ofNullable(html.get(id));
    }

    void keepShown(String id, String shown) {
        html.put(id, shown);
    }

    /** What came of a cell, and what it had shown before its end. */
    record Ran(Outcome outcome, OutputsOfCell shown) {}

    private void begin(String id) {
        synchronized (turn) {
            working = Thread.currentThread();
            program = design.isProgram(id);
        }
    }

    private void end() {
        synchronized (turn) {
            working = null;
            // Whoever wanted it to stop wanted this cell to, and not what the thread does next.
            Thread.interrupted();
        }
    }

    /** Ends the cell that runs, if one does. From any thread. */
    void stop() {
        stop(true);
    }

    /** Ends what is being answered of the design as it was; a program that a person has started goes on. */
    void stopAnswering() {
        stop(false);
    }

    private void stop(boolean programs) {
        synchronized (turn) {
            Thread present = working;
            if (present != null && (programs || !program)) {
                languages.interrupted();
                present.interrupt();
            }
        }
    }

    /** As {@link #save}, if anything was changed here or run here. */
    void putAway() throws DeskFault {
        if (dirty) {
            save();
        }
    }

    /**
     * Writes the file, with what still holds of what was shown.
     *
     * @throws DeskFault if the file is not as it was read or written here last; then this page's stands beside it
     */
    void save() throws DeskFault {
        Map<String, CellResult> holding = new LinkedHashMap<>();
        results.forEach((id, result) -> {
            if (!design.isStale(id)) {
                holding.put(id, result);
            }
        });
        Notebook now = kept.withCells(cells).withResults(holding);
        if (!folder.holds(name, disk)) {
            String beside =
                    folder.keepOther(name, isOneText() ? now.cells().get(0).source() : now.json());
            throw new DeskFault(name + " was changed by another program; what this page has is in " + beside);
        }
        folder.save(name, now);
        disk = folder.text(name);
        kept = now;
        dirty = false;
    }

    @Override
    public void close() {
        languages.close();
    }
}
