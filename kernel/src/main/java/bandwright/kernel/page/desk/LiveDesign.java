// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.Outcome;
import bandwright.dsl.Workbench;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.source.SourceText;
import bandwright.kernel.cell.CellConsole;
import bandwright.kernel.cell.CellLanguage;
import bandwright.kernel.cell.CellLanguages;
import bandwright.kernel.files.ExportFolder;
import bandwright.kernel.notebook.CellKind;
import bandwright.kernel.notebook.NotebookCell;

/**
 * The design that a notebook's cells make, kept true at every change: what cells define is taken over at once, what they ask is answered when the page
 * asks for it. Cells in Java are programs: they run when a person says so, and not before.
 *
 * <p>It is the design of a run from the top, whatever was typed first. A cell is answered by the whole of it; only a cell above one that replaces or
 * forgets something is answered by the cells down to itself: it tells of the ring before she changed her mind. While a text cannot be taken over, what
 * the cell last said holds.
 *
 * <p>For one thread at a time.
 */
final class LiveDesign {
    private static final Pattern WRITES = Pattern.compile("^\\s*(?:export|sheet)\\b", Pattern.MULTILINE);
    private static final Pattern FORGETS = Pattern.compile("^\\s*forget\\b", Pattern.MULTILINE);

    private final CellLanguages languages;
    private final Map<String, SourceText> texts = new LinkedHashMap<>();
    /** What was last taken over of a cell: that stands while its text is being mended. */
    private final Map<String, SourceText> sound = new HashMap<>();
    /** What is said of cells apart from what {@linkplain Workbench#standing stands} in the design by itself. */
    private final Map<String, List<Diagnostic>> told = new LinkedHashMap<>();
    /** Cells of which the design has taken nothing over, as their text stands. */
    private final Set<String> refused = new HashSet<>();

    private final Map<String, String> shown = new LinkedHashMap<>();
    private final Map<String, Optional<String>> prints = new HashMap<>();
    /** Cells that replace or take away what others have made. */
    private final Set<String> undoing = new HashSet<>();
    /** The last run from the top, cell by cell; nothing where something was taken over since without one. */
    private Map<String, Stage> ran = new LinkedHashMap<>();
    /** Of that run what is above the last cell that undoes something. */
    private Map<String, Stage> stages = Map.of();

    private List<String> order = List.of();
    private Workbench workbench = Workbench.empty();

    /** The design just before a cell and with it, in a run from the top. */
    private record Stage(Workbench before, Workbench with) {}

    LiveDesign(CellLanguages languages) {
        this.languages = languages;
    }

    Workbench workbench() {
        return workbench;
    }

    /** Takes over what was changed, and tells which cells' texts that were. */
    Set<String> follow(List<NotebookCell> cells) {
        Map<String, SourceText> now = new LinkedHashMap<>();
        int number = 0;
        for (NotebookCell cell : cells) {
            if (cell.kind() == CellKind.CODE) {
                number++;
                now.put(cell.id(), new SourceText("cell " + number, cell.source()));
            }
        }
        Workbench before = workbench;
        for (String gone : new ArrayList<>(texts.keySet())) {
            if (!now.containsKey(gone)) {
                forget(gone);
                languages.forget(gone);
            }
        }
        List<String> placed = List.copyOf(now.keySet());
        boolean undone = undoes() || !placed.equals(order);
        order = placed;
        Set<String> changed = new LinkedHashSet<>();
        for (Map.Entry<String, SourceText> entry : now.entrySet()) {
            SourceText old = texts.get(entry.getKey());
            if (old == null || !old.equals(entry.getValue())) {
                if (old != null && isJava(old) != isJava(entry.getValue())) {
                    forget(entry.getKey());
                }
                texts.put(entry.getKey(), entry.getValue());
                changed.add(entry.getKey());
            }
        }
        if (!changed.isEmpty() || undone) {
            if (!undone) {
                ran.clear();
                changed.forEach(this::define);
                tryRefusedAgain();
            }
            if (undone || undoes()) {
                runFromTheTop(changed);
            } else {
                stages = Map.of();
            }
        }
        for (String id : placed) {
            if (isJava(text(id)) && !workbench.holdsAllOf(before, id::equals)) {
                // What the program has set was said again by a ring cell: it is for a person to run it again.
                shown.remove(id);
            }
        }
        return changed;
    }

    private void forget(String id) {
        texts.remove(id);
        sound.remove(id);
        told.remove(id);
        refused.remove(id);
        undoing.remove(id);
        shown.remove(id);
        ran.clear();
        become(workbench.without(id));
    }

    private void become(Workbench next) {
        if (next != workbench) {
            workbench = next;
            prints.clear();
        }
    }

    private void define(String id) {
        become(defined(workbench, id));
    }

    /** The design with a cell; what is to be said about that is kept. */
    private Workbench defined(Workbench before, String id) {
        SourceText text = text(id);
        if (isJava(text)) {
            return before;
        }
        Outcome outcome = languages.of(text).define(before, id, text);
        if (outcome.hasErrors()) {
            refused.add(id);
        } else {
            refused.remove(id);
            sound.put(id, text);
            mark(id, before, outcome.workbench());
        }
        tell(id, text, outcome);
        return outcome.workbench();
    }

    private void mark(String id, Workbench before, Workbench with) {
        if (with.holdsAllOf(before, other -> !other.equals(id))) {
            undoing.remove(id);
        } else {
            undoing.add(id);
        }
    }

    private void tell(String id, SourceText text, Outcome outcome) {
        List<Diagnostic> own = new ArrayList<>(outcome.diagnostics());
        own.removeAll(outcome.workbench().standing(text));
        told.put(id, own);
    }

    /** Whether what one cell makes is replaced or taken away by another. */
    private boolean undoes() {
        return texts.keySet().stream().anyMatch(this::undoes);
    }

    private boolean undoes(String id) {
        return undoing.contains(id) || FORGETS.matcher(text(id).text()).find();
    }

    /** @param changed cells whose texts are others than in the last run; what stands above the first of them is as it was */
    private void runFromTheTop(Set<String> changed) {
        List<String> ringCells = ringCells();
        Workbench next = workbench.startingOver(ringCells);
        Map<String, Stage> all = new LinkedHashMap<>();
        List<String> before = List.copyOf(ran.keySet());
        boolean same = true;
        for (int i = 0; i < ringCells.size(); i++) {
            String id = ringCells.get(i);
            same &= i < before.size() && before.get(i).equals(id) && !changed.contains(id);
            Stage stage = same ? ran.get(id) : stage(next, id);
            if (stage != null) {
                all.put(id, stage);
                next = stage.with();
            }
        }
        ran = all;
        Map<String, Stage> above = new LinkedHashMap<>(all);
        for (int i = ringCells.size() - 1; i >= 0 && !undoes(ringCells.get(i)); i--) {
            above.remove(ringCells.get(i));
        }
        stages = above;
        become(next);
    }

    private Stage stage(Workbench before, String id) {
        Workbench with = defined(before, id);
        SourceText good = sound.get(id);
        if (refused.contains(id) && good != null) {
            // What it said before it was broken holds until it is mended.
            Workbench held = languages.of(good).define(before, id, good).workbench();
            mark(id, before, held);
            with = defined(held, id);
        }
        return new Stage(before, with);
    }

    /** What was wrong with a cell may have been mended in another, or be right together with another that is refused for it. */
    private void tryRefusedAgain() {
        List<String> readable = refused.stream()
                .filter(id -> Workbench.canRead(text(id)))
                .sorted(Comparator.comparingInt(order::indexOf))
                .toList();
        boolean taken = true;
        while (taken) {
            taken = false;
            for (String id : readable) {
                if (refused.contains(id)) {
                    define(id);
                    taken |= !refused.contains(id);
                }
            }
        }
        if (readable.stream().filter(refused::contains).count() > 1 && refusedFromTheTop() < refused.size()) {
            runFromTheTop(Set.of());
        }
    }

    /** How many cells a run from the top would refuse, as their texts stand. */
    private int refusedFromTheTop() {
        List<String> ringCells = ringCells();
        Workbench next = workbench.startingOver(ringCells);
        int count = 0;
        for (String id : ringCells) {
            Outcome outcome = languages.of(text(id)).define(next, id, text(id));
            count += outcome.hasErrors() ? 1 : 0;
            next = outcome.workbench();
        }
        return count;
    }

    private List<String> ringCells() {
        return order.stream().filter(id -> !isJava(text(id))).toList();
    }

    /** The design that a cell is answered by. */
    private Workbench asked(String id) {
        Stage stage = stages.get(id);
        return stage == null ? workbench : stage.with();
    }

    /** The how manieth cell of code it is, from 1, as messages call it; 0 if it is none. */
    int number(String id) {
        return order.indexOf(id) + 1;
    }

    private SourceText text(String id) {
        return texts.getOrDefault(id, new SourceText("cell", ""));
    }

    private static boolean isJava(SourceText text) {
        return isJava(text.text());
    }

    static boolean isJava(String source) {
        return source.lines().findFirst().orElse("").strip().equals("java");
    }

    /** What is to be said of a cell's text. */
    List<Diagnostic> told(String id) {
        List<Diagnostic> all = new ArrayList<>(told.getOrDefault(id, List.of()));
        asked(id).standing(text(id)).stream()
                .filter(diagnostic -> !all.contains(diagnostic))
                .forEach(all::add);
        return all;
    }

    /** Whether what a cell has shown no longer holds, or nothing was shown of it yet. */
    boolean isStale(String id) {
        SourceText text = text(id);
        if (isJava(text)) {
            return !text.text().equals(shown.get(id));
        }
        Optional<String> print = print(id);
        return print.isPresent() && !print.get().equals(shown.get(id));
    }

    /** Worked out once for each design: with many cells it is most of the work of a change. */
    private Optional<String> print(String id) {
        return prints.computeIfAbsent(id, cell -> asked(cell).fingerprintOf(text(cell)));
    }

    /** Whether a cell does more than show: a program, or one that writes files. Such a cell runs when a person says so. */
    boolean acts(String id) {
        SourceText text = text(id);
        return isJava(text) || WRITES.matcher(text.text()).find();
    }

    boolean isProgram(String id) {
        return isJava(text(id));
    }

    /** Whether a cell asks anything. */
    boolean asks(String id) {
        SourceText text = text(id);
        return isJava(text) || print(id).isPresent();
    }

    /**
     * A cell at one moment, to be run: it can be, and take long, while the design goes on.
     *
     * @param before the design that it asks
     */
    record Question(String id, SourceText text, CellLanguage language, Workbench before) {
        /** What comes of it; its exports are written. Takes nothing over. */
        Outcome answered(CellConsole console, ExportFolder folder) {
            return folder.written(before, language.run(before, id, text, console));
        }
    }

    Question question(String id) {
        SourceText text = text(id);
        Stage stage = stages.get(id);
        return new Question(id, text, languages.of(text), stage == null ? workbench : stage.before());
    }

    /**
     * Takes over what came of a cell, unless the design is another by now.
     *
     * @param whole whether it came to its end
     */
    boolean adopt(Question question, Outcome outcome, boolean whole) {
        String id = question.id();
        SourceText text = question.text();
        if (!question.equals(question(id))) {
            return false;
        }
        if (!stages.containsKey(id)) {
            become(outcome.workbench());
        }
        tell(id, text, outcome);
        if (isJava(text)) {
            mark(id, question.before(), workbench);
            // Others may have waited for what it gives.
            ran.clear();
            tryRefusedAgain();
        }
        if (whole) {
            shown.put(id, isJava(text) ? text.text() : print(id).orElse(""));
        }
        return true;
    }

    /** Which cell defines a name, if one does. */
    @Nullable
    String cellOf(SourceText text) {
        for (Map.Entry<String, SourceText> entry : texts.entrySet()) {
            if (entry.getValue().equals(text)) {
                return entry.getKey();
            }
        }
        return null;
    }
}
