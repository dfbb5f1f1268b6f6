// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.Outcome;
import bandwright.dsl.Workbench;
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
 * A notebook that pages work at. It is one, however many pages show it: a page says which text of a cell it has changed, and where another has
 * changed the same text both texts stay.
 *
 * <p>What changes it is for one thread at a time, the one that holds the notebook's {@link #lock()}. Cells of ring text are answered without it, so
 * that what is typed never waits for a picture.
 */
final class OpenNotebook implements AutoCloseable {
    private static final String OTHER = "the other text of the cell above: two pages had changed it";

    private final String name;
    private final NotebookFolder folder;
    private final CellLanguages languages = new CellLanguages(List.of(new JavaCells()));
    private final LiveDesign design = new LiveDesign(languages);
    private final CellList cells;
    private final Set<String> silent = new HashSet<>();
    private final Map<String, CellResult> results = new LinkedHashMap<>();
    private final Map<String, String> html = new HashMap<>();
    private final Past past;
    private final Object lock = new Object();
    private final Work work = new Work(languages);
    private final boolean recovered;
    private final @Nullable String beside;
    private final NotebookOnDisk file;
    private int count;
    private boolean typed;
    private boolean answered;

    OpenNotebook(String name, NotebookFolder folder) throws DeskFault {
        this.name = name;
        this.folder = folder;
        file = new NotebookOnDisk(name, folder);
        Notebook saved = file.notebook();
        Notebook draft = folder.draft(name).orElse(null);
        PastJson.Kept before = folder.past(name);
        boolean same = before == null || before.disk().equals(PastJson.mark(file.text()));
        past = before != null && same ? before.past() : new Past();
        boolean other =
                draft != null && !draft.json().equals(saved.withoutResults().json());
        if (draft != null && other && !same) {
            // Another program has written the file since: it stands, and what was typed here stands beside it.
            beside = file.keepBeside(draft.cells());
            folder.forgetDraft(name);
            draft = null;
        } else {
            beside = null;
        }
        typed = draft != null;
        recovered = other && same;
        if (draft != null) {
            file.begin(draft.cells());
        }
        cells = new CellList(file.notebook().cells());
        design.follow(cells.all());
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

    /** The file that holds what was typed earlier, where another program has written the notebook since. */
    @Nullable
    String beside() {
        return beside;
    }

    /** Whether it is one text and no notebook. */
    boolean isOneText() {
        return file.isOneText();
    }

    List<NotebookCell> cells() {
        return cells.all();
    }

    /** What stands in a cell; empty text where there is none of that id. */
    String source(String id) {
        return cells.find(id).map(NotebookCell::source).orElse("");
    }

    /** The notebook as it stands, without results. */
    Notebook notebook() {
        return file.with(cells.all());
    }

    LiveDesign design() {
        return design;
    }

    Past past() {
        return past;
    }

    /** Whether what a cell has shown was cleared away; it is shown again when a person runs it. */
    boolean isSilent(String id) {
        return silent.contains(id);
    }

    Past.Moment moment() {
        return new Past.Moment(cells.all(), silent);
    }

    /**
     * A page has changed a cell's text.
     *
     * @param known what the cell's text was, for all the page knows: what it was told last, and what it has sent without hearing of it
     * @return the id of a new cell with the page's text, where another page had changed the cell too; nothing if all is well
     */
    @Nullable
    String type(String id, Set<String> known, String source) throws DeskFault {
        NotebookCell cell = cells.get(id);
        if (cell.source().equals(source)) {
            return null;
        }
        if (!known.contains(cell.source()) && isOneText()) {
            // One text has no room for another: it gets a file of its own.
            NotebookCell theirs = new NotebookCell(id, cell.kind(), source, cell.tags(), cell.attachments());
            throw new DeskFault(
                    "another page has changed this text; yours is kept in " + file.keepBeside(List.of(theirs)));
        }
        if (!known.contains(cell.source())) {
            return cells.insert(CellKind.RAW, "# " + OTHER + "\n" + source, id);
        }
        cells.write(id, cell.kind(), source);
        return null;
    }

    /** @param after the cell it comes after; the first place of all if absent */
    String insert(CellKind kind, String source, @Nullable String after) throws DeskFault {
        if (isOneText()) {
            throw new DeskFault("a .ring file is one text; save it as a notebook to have several cells");
        }
        return cells.insert(kind, source, after);
    }

    /** What it has shown stays known: it may be taken back. */
    void remove(String id) throws DeskFault {
        cells.remove(id);
    }

    /** Clears away what all cells have shown. */
    void clear() {
        cells.all().stream()
                .filter(cell -> cell.kind() == CellKind.CODE)
                .map(NotebookCell::id)
                .forEach(silent::add);
    }

    /** @param by how many places, downwards if positive */
    void move(String id, int by) throws DeskFault {
        cells.move(id, by);
    }

    void turnInto(String id, CellKind kind) throws DeskFault {
        cells.write(id, kind, cells.get(id).source());
    }

    /**
     * After changes: the design follows, and what was typed is safe.
     *
     * @param before the changes
     * @param typed the cell that was typed in, if no more was done
     */
    void changed(Past.Moment before, @Nullable String typed) throws DeskFault {
        past.did(before, moment(), typed);
        keep();
    }

    /** Takes back what was done last, or does it again. */
    void go(boolean again) throws DeskFault {
        Past.Moment there = (again ? past.doAgain(moment()) : past.takeBack(moment()))
                .orElseThrow(
                        () -> new DeskFault(again ? "there is nothing to do again" : "there is nothing to take back"));
        cells.become(there.cells());
        silent.clear();
        silent.addAll(there.silent());
        keep();
    }

    private void keep() throws DeskFault {
        typed = true;
        if (past.changed()) {
            folder.keepPast(name, past, file.text());
        }
        folder.keep(name, notebook());
        design.follow(cells.all());
    }

    /**
     * Runs a cell; its exports go into the folder.
     *
     * @param person whether a person has said so
     * @return nothing if the design has become another meanwhile
     */
    Optional<Ran> answer(String id, boolean person) throws DeskFault {
        synchronized (work) {
            LiveDesign.Question question;
            synchronized (lock) {
                cells.get(id);
                if (design.acts(id) && !person) {
                    throw new DeskFault("this cell writes files or is a program: it runs when you say so");
                }
                if (person) {
                    silent.remove(id);
                    past.pause();
                }
                question = design.question(id);
                if (design.isProgram(id)) {
                    // It changes the design as it goes: nobody else does, meanwhile.
                    return answer(question, true);
                }
            }
            return answer(question, false);
        }
    }

    private Optional<Ran> answer(LiveDesign.Question question, boolean program) {
        OutputsOfCell shown = new OutputsOfCell();
        work.begin(program);
        Outcome outcome;
        boolean whole;
        try {
            outcome = question.answered(shown.console((done, of) -> {}), new ExportFolder(folder.path()));
        } finally {
            whole = work.end();
        }
        synchronized (lock) {
            if (!design.adopt(question, outcome, whole)) {
                return Optional.empty();
            }
            count++;
            answered = true;
            List<Output> outputs = new ArrayList<>(shown.outputs());
            outputs.addAll(Displays.outputs(outcome.diagnostics(), outcome.answers()));
            results.put(question.id(), new CellResult(count, outputs));
            return Optional.of(new Ran(outcome, shown));
        }
    }

    /** Makes something to hand over, which {@link #stop} can stop. */
    HandOut handOut(HandOutMaker maker) throws DeskFault {
        synchronized (work) {
            Notebook now;
            Workbench workbench;
            synchronized (lock) {
                now = notebook();
                workbench = design.workbench();
            }
            work.begin(true);
            HandOut made;
            boolean whole;
            try {
                made = maker.of(now, workbench);
            } finally {
                whole = work.end();
            }
            if (!whole) {
                throw new DeskFault("it was stopped");
            }
            return made;
        }
    }

    /** Makes something of the notebook and its design at one moment. */
    @FunctionalInterface
    interface HandOutMaker {
        HandOut of(Notebook notebook, Workbench workbench) throws DeskFault;
    }

    /** What a cell has shown to a page, as the page had it. */
    Optional<String> shown(String id) {
        return silent.contains(id) ? Optional.empty() : Optional.ofNullable(html.get(id));
    }

    void keepShown(String id, String shown) {
        html.put(id, shown);
    }

    /** What came of a cell, and what it had shown before its end. */
    record Ran(Outcome outcome, OutputsOfCell shown) {}

    /** Ends the cell that runs, if one does. From any thread. */
    void stop() {
        work.stop(true);
    }

    /** Ends what is being answered of the design as it was; a program that a person has started goes on. */
    void stopAnswering() {
        work.stop(false);
    }

    /**
     * Takes over what another program has written into the file, if nothing was typed here since it was read. That is a step that can be taken back.
     *
     * @return whether it did
     */
    boolean readAgain() throws DeskFault {
        if (typed || file.isAsLeft()) {
            return false;
        }
        Past.Moment before = moment();
        file.readAgain();
        cells.become(file.notebook().cells());
        past.did(before, moment(), null);
        folder.keepPast(name, past, file.text());
        answered = false;
        design.follow(cells.all());
        return true;
    }

    /** As {@link #save}, if anything was changed here or run here; results alone are not worth a file beside another program's. */
    void putAway() throws DeskFault {
        if (typed || (answered && file.isAsLeft())) {
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
        file.save(cells.all(), holding, silent);
        past.pause();
        folder.keepPast(name, past, file.text());
        typed = false;
        answered = false;
    }

    @Override
    public void close() {
        languages.close();
    }
}
