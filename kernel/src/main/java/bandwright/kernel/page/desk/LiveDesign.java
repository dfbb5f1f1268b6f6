// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.desk;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
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
 * <p>For one thread at a time.
 */
final class LiveDesign {
    private static final Pattern WRITES = Pattern.compile("^\\s*(?:export|sheet)\\b", Pattern.MULTILINE);

    private final CellLanguages languages;
    private final Map<String, SourceText> texts = new LinkedHashMap<>();
    private final Map<String, List<Diagnostic>> told = new LinkedHashMap<>();
    private final Map<String, String> shown = new LinkedHashMap<>();
    private List<String> order = List.of();
    private Workbench workbench = Workbench.empty();

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
        for (String gone : new ArrayList<>(texts.keySet())) {
            if (!now.containsKey(gone)) {
                forget(gone);
            }
        }
        Set<String> changed = new HashSet<>();
        now.forEach((id, text) -> {
            SourceText before = texts.get(id);
            if (before == null || !before.text().equals(text.text())) {
                texts.put(id, text);
                changed.add(id);
            }
        });
        now.keySet().stream().filter(changed::contains).forEach(this::define);
        List<String> placed = List.copyOf(now.keySet());
        boolean twice = told.values().stream()
                .flatMap(List::stream)
                .anyMatch(diagnostic -> diagnostic.code().equals("redefined"));
        if (twice && !(changed.isEmpty() && placed.equals(order))) {
            // A name is defined twice: the later one on the page counts, as in a run from the top, whichever was typed
            // last.
            placed.forEach(this::define);
        }
        order = placed;
        return changed;
    }

    private void forget(String id) {
        texts.remove(id);
        told.remove(id);
        shown.remove(id);
        workbench = workbench.without(id);
        languages.forget(id);
    }

    private void define(String id) {
        SourceText text = text(id);
        if (isJava(text)) {
            return;
        }
        Outcome outcome = languages.of(text).define(workbench, id, text);
        workbench = outcome.workbench();
        told.put(id, outcome.diagnostics());
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
        return told.getOrDefault(id, List.of());
    }

    /** Whether what a cell has shown no longer holds, or nothing was shown of it yet. */
    boolean isStale(String id) {
        SourceText text = text(id);
        if (isJava(text)) {
            return !shown.containsKey(id);
        }
        Optional<String> print = workbench.fingerprintOf(text);
        return print.isPresent() && !print.get().equals(shown.get(id));
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
        return isJava(text) || workbench.fingerprintOf(text).isPresent();
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
        return new Question(id, text, languages.of(text), workbench);
    }

    /**
     * Takes over what came of a cell, unless the design is another by now.
     *
     * @param whole whether it came to its end
     */
    boolean adopt(Question question, Outcome outcome, boolean whole) {
        if (question.before() != workbench || !question.text().equals(text(question.id()))) {
            return false;
        }
        workbench = outcome.workbench();
        told.put(question.id(), outcome.diagnostics());
        if (whole) {
            boolean java = isJava(question.text());
            shown.put(
                    question.id(),
                    java ? "" : workbench.fingerprintOf(question.text()).orElse(""));
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
