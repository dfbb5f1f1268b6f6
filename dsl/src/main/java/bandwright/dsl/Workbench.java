// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.check.Checks;
import bandwright.dsl.check.Findings;
import bandwright.dsl.check.LimitTable;
import bandwright.dsl.construct.Ring;
import bandwright.dsl.construct.Workshop;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.edit.Completion;
import bandwright.dsl.edit.Documentation;
import bandwright.dsl.explore.Chapter;
import bandwright.dsl.explore.ContrastSide;
import bandwright.dsl.explore.Contrasting;
import bandwright.dsl.explore.Explorer;
import bandwright.dsl.export.glb.GlbWriter;
import bandwright.dsl.measure.RingMeasurer;
import bandwright.dsl.model.Fault;
import bandwright.dsl.parse.ParseResult;
import bandwright.dsl.parse.RingParser;
import bandwright.dsl.resolve.Definitions;
import bandwright.dsl.resolve.Entry;
import bandwright.dsl.resolve.OwnFunction;
import bandwright.dsl.resolve.Resolution;
import bandwright.dsl.resolve.expression.Functions;
import bandwright.dsl.resolve.profile.Form;
import bandwright.dsl.source.Place;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.syntax.Definition;
import bandwright.dsl.syntax.Statement;
import bandwright.dsl.view.Contrast;
import bandwright.dsl.view.Turntable;
import bandwright.dsl.view.drawing.OverlayDrawing;
import bandwright.dsl.view.drawing.Section;
import bandwright.dsl.view.ring.RingSection;
import bandwright.dsl.view.ring.RingTurntable;

/**
 * A design in progress. Immutable: running a cell gives another workbench. Serves one thread at a time; workbenches that come
 * from one another share the bodies they have made.
 *
 * <pre>{@code
 * Outcome outcome = Workbench.empty().run("cell-1", new SourceText("cell 1", text));
 * }</pre>
 */
public final class Workbench {
    private static final int MOST_CHAPTERS = 300;
    /** Millimetres of paper for one of the ring. */
    private static final double OVERLAY_SCALE = 15;

    private final Definitions definitions;
    private final Workshop workshop;
    private final ParseMemory texts;
    private final List<Chapter> story;
    private final RefusedCells refused;
    private final Resolution design;
    private @Nullable Ring ring;
    private @Nullable Set<Diagnostic> faults;
    private @Nullable Findings findings;
    private @Nullable Findings quickFindings;

    private Workbench(
            Definitions definitions, Workshop workshop, ParseMemory texts, List<Chapter> story, RefusedCells refused) {
        this.refused = refused;
        this.texts = texts;
        this.definitions = definitions;
        this.story = List.copyOf(story);
        this.workshop = workshop;
        this.design = new Resolution(definitions, new RingMeasurer(workshop), LimitTable.BUILT_IN);
    }

    public static Workbench empty() {
        return new Workbench(Definitions.EMPTY, new Workshop(), new ParseMemory(), List.of(), RefusedCells.NONE);
    }

    /**
     * Runs a cell's text. Pure: nothing but the returned outcome changes. A cell with an error changes nothing. Of a cell that makes,
     * keeps or takes away something, a question that is wrong in itself is a warning and has no answer; what the cell makes stands,
     * but none of its files is handed on.
     *
     * @param cellId who the cell is; running the same cell again replaces what it made
     * @param text the name under which errors speak of the cell, and its text
     */
    public Outcome run(String cellId, SourceText text) {
        return run(cellId, text, Listener.DEAF);
    }

    /**
     * As {@link #run(String, SourceText)}, and tells how far long work is. When the calling thread is interrupted, a question that
     * works through variants stops with a warning, and those below what is being answered are not; what the cell makes stands.
     */
    public Outcome run(String cellId, SourceText text, Listener listener) {
        return run(cellId, text, List.of(), true, listener);
    }

    /** As {@link #run}, but nothing that the cell asks is answered: for those who want the {@link #report numbers} alone. */
    public Outcome define(String cellId, SourceText text) {
        return run(cellId, text, List.of(), false, Listener.DEAF);
    }

    /** As {@link #define(String, SourceText)}, of a cell that also gives functions which ring text can call. */
    public Outcome define(String cellId, SourceText text, List<RingFunction> functions) {
        List<OwnFunction> own = functions.stream()
                .map(function -> OwnFunctions.of(cellId, function))
                .toList();
        return run(cellId, text, own, false, Listener.DEAF);
    }

    private Outcome run(
            String cellId, SourceText text, List<OwnFunction> functions, boolean answered, Listener listener) {
        ParseResult parsed = RingParser.parse(text);
        if (parsed.hasErrors()) {
            return refused(cellId, text, parsed.names(), parsed.diagnostics());
        }
        Definitions.Change change = definitions.with(cellId, text, parsed.cell());
        List<Diagnostic> told = new ArrayList<>(parsed.diagnostics());
        told.addAll(change.diagnostics());
        if (change.hasErrors()) {
            return refused(cellId, text, parsed.names(), told);
        }
        Workbench next =
                decided(change.definitions().withFunctions(cellId, functions), refused.taken(cellId, parsed.names()));
        told.addAll(next.newFaults(this, text));
        if (told.stream().anyMatch(Diagnostic::isError)) {
            // Nothing was replaced after all.
            told.removeIf(note -> note.code().equals("redefined"));
            return refused(cellId, text, parsed.names(), told);
        }
        Outcome outcome = answered
                ? next.answered(this, parsed.cell().statements(), text, told, listener)
                : new Outcome(next, told, List.of());
        return outcome.hasErrors()
                ? refused(cellId, text, parsed.names(), outcome.diagnostics())
                : new Outcome(
                        outcome.workbench(),
                        Cascades.gathered(next.refused.explained(outcome.diagnostics())),
                        outcome.answers(),
                        outcome.unanswered());
    }

    /** A cell with an error changes nothing but what is known of refused cells; what the design had by a name, it has still. */
    private Outcome refused(String cellId, SourceText text, Set<String> names, List<Diagnostic> told) {
        Set<String> missing = new TreeSet<>(names);
        missing.removeAll(definitions.names());
        RefusedCells cells = refused.refused(cellId, text.name(), missing);
        Workbench same = cells.equals(refused) ? this : new Workbench(definitions, workshop, texts, story, cells);
        return new Outcome(same, Cascades.gathered(cells.explained(told)), List.of());
    }

    /** This design with other definitions, and what was decided by them kept in mind. */
    private Workbench decided(Definitions changed, RefusedCells cells) {
        Chapter chapter = new Chapter(definitions, changed);
        List<Chapter> longer = new ArrayList<>(story);
        if (chapter.tells()) {
            longer.add(chapter);
        }
        // Nobody reads a longer story, and each chapter holds a design.
        return new Workbench(
                changed,
                workshop,
                texts,
                longer.subList(Math.max(0, longer.size() - MOST_CHAPTERS), longer.size()),
                cells);
    }

    private Outcome answered(
            Workbench before, List<Statement> statements, SourceText text, List<Diagnostic> told, Listener listener) {
        Exploring exploring = new Exploring(new Explorer(design, workshop, text, listener::worked), story);
        Asking asking = new Asking(design, workshop, this::ring, this::checked, this::checkedQuickly, text, exploring);
        CellAnswers answers = CellAnswers.of(statements, asking, told);
        return answers.failed()
                ? new Outcome(before, answers.told(), List.of(), answers.unanswered())
                : new Outcome(this, answers.told(), answers.answers(), answers.unanswered());
    }

    /**
     * What is wrong now and was not before: faults of this cell's text, and errors that its change has caused elsewhere. Notes about
     * things that are not there yet count for this cell alone.
     */
    List<Diagnostic> newFaults(Workbench before, SourceText text) {
        List<Diagnostic> fresh = new ArrayList<>();
        for (Diagnostic fault : faults()) {
            Place place = fault.place();
            boolean here = place != null && place.source().equals(text);
            if (here || (fault.isError() && !before.faults().contains(fault))) {
                fresh.add(fault);
            }
        }
        return fresh;
    }

    private Set<Diagnostic> faults() {
        if (faults == null) {
            faults = new LinkedHashSet<>(design.problems());
            if (faults.isEmpty() && !design.bands().isEmpty()) {
                try {
                    ring().check();
                } catch (Fault fault) {
                    faults.addAll(fault.diagnostics());
                }
            }
        }
        return faults;
    }

    /** What the checks find about the design as it stands, each with its place on the ring. Nothing where there is no ring. */
    public Findings findings() {
        try {
            return checked();
        } catch (Fault fault) {
            return Checks.notMade(fault);
        }
    }

    /** What is told under a picture. */
    private Findings checkedQuickly() {
        // Not what show checks has found, even where that is known: which was asked first must not show.
        if (quickFindings == null) {
            quickFindings = Checks.quick(ring(), workshop, design.ownLimits());
        }
        return quickFindings;
    }

    private Findings checked() {
        if (findings == null) {
            findings = design.bands().isEmpty()
                    ? new Findings(List.of())
                    : Checks.of(ring(), workshop, design.ownLimits());
        }
        return findings;
    }

    private Ring ring() {
        if (ring == null) {
            ring = workshop.ring(design);
        }
        return ring;
    }

    /** Whether a text can be read as ring text, whatever it means. */
    public static boolean canRead(SourceText text) {
        return !RingParser.parse(text).hasErrors();
    }

    /** Words that can come next in a cell's text at an offset in code points, with what is defined so far. */
    public Completion completion(SourceText text, int offset) {
        return Completion.at(design, text, offset);
    }

    /** What the word at an offset means, if anything is known about it. */
    public Optional<Documentation> documentation(SourceText text, int offset) {
        return Documentation.at(design, text, offset);
    }

    /** What the questions of a cell hang on: a text that changes when an answer may have changed. Nothing if it asks nothing. */
    public Optional<String> fingerprintOf(SourceText cell) {
        return new Fingerprints(design).of(texts.statements(cell));
    }

    /** What an expression is worth in this design; the text holds nothing else. Nothing is kept of the question. */
    public Worked value(SourceText expression) {
        return new LoneQuestion(design, expression).value();
    }

    /**
     * Every combination of some handles, to be worked out row by row; serves any number of threads.
     *
     * @param plan one {@code vary}: what varies, and in its braces what is asked for
     */
    public Swept sweep(SourceText plan) {
        return new LoneQuestion(design, plan).sweep(workshop);
    }

    /**
     * Conditions that are none of this design's own, judged on it: what a text of {@code require} lines says of it. A title and
     * comments may stand in the text; whatever would make or ask something is an error, for it could change what is judged.
     */
    public Judged judged(SourceText conditions) {
        return Requirements.judged(design, conditions);
    }

    /**
     * This design and another from a text of its own, figure by figure.
     *
     * @param name what this one is called, and {@code otherName} the other
     */
    public Comparison compared(String name, Workbench other, String otherName) {
        Contrast contrast = Contrasting.of(
                new ContrastSide(name, design, findings()),
                new ContrastSide(otherName, other.design, other.findings()));
        Optional<Section> own = section();
        Optional<Section> its = other.section();
        return new Comparison(
                contrast,
                own.isEmpty() || its.isEmpty()
                        ? null
                        : Charts.drawn(OverlayDrawing.of(name, own.get(), otherName, its.get(), OVERLAY_SCALE)));
    }

    /** Through all parts at the top of the ring, if there is one. */
    private Optional<Section> section() {
        try {
            if (design.bands().isEmpty()) {
                return Optional.empty();
            }
            Set<String> parts = new LinkedHashSet<>();
            ring().sections().forEach(part -> parts.add(part.name()));
            return Optional.of(RingSection.of(ring(), parts, 0));
        } catch (Fault fault) {
            return Optional.empty();
        }
    }

    /** Whether a word followed by a bracket means something in ring text already: a function, a measure, a form. */
    public boolean isCall(String word) {
        return Functions.WORDS.contains(word)
                || design.measureWords().contains(word)
                || Form.find(word).isPresent();
    }

    /** Takes away all that a cell made. */
    public Workbench without(String cellId) {
        return decided(definitions.without(cellId), refused.taken(cellId, Set.of()));
    }

    /** This design without what some cells made, and with no story: where those cells are run again, one by one, from the top. */
    public Workbench startingOver(Collection<String> cellIds) {
        return new Workbench(definitions.startingOver(cellIds), workshop, texts, List.of(), RefusedCells.NONE);
    }

    /** Whether all that some cells made in another design is held here too, each by the very statement it was there. */
    public boolean holdsAllOf(Workbench other, Predicate<String> cellIds) {
        Set<Entry> here = Collections.newSetFromMap(new IdentityHashMap<>());
        here.addAll(definitions.entries());
        return other.definitions.entries().stream()
                .filter(entry -> cellIds.test(entry.cellId()))
                .allMatch(here::contains);
    }

    /** What is wrong, or waits, in a text that this design holds, as things stand now. */
    public List<Diagnostic> standing(SourceText text) {
        List<Diagnostic> here = faults().stream()
                .filter(fault -> fault.place() != null && fault.place().source().equals(text))
                .toList();
        return Cascades.gathered(refused.explained(here));
    }

    /** The numbers of the design as it stands. */
    public Report report() {
        return new Reporter(design, refused, this::ring, this::checked).report();
    }

    /** As {@link #report}, without checks, which can take long: for numbers that follow every change. */
    public Report numbers() {
        return new Reporter(design, refused, this::ring, () -> new Findings(List.of())).report();
    }

    /** Where the value of a definition stands; nothing if nothing of that name has a plain value. */
    public Optional<Place> valueOf(String name) {
        return definitions
                .find(name)
                .filter(entry -> entry.statement() instanceof Definition)
                .map(entry -> entry.place(((Definition) entry.statement()).value()));
    }

    /**
     * The model of the whole ring, to turn; nothing while there is no ring.
     *
     * @param checked whether failed and close checks are pointed at, which takes longer
     */
    public Optional<Turntable> turntable(boolean checked) {
        if (design.bands().isEmpty()) {
            return Optional.empty();
        }
        try {
            Ring made = ring();
            Set<String> parts = new LinkedHashSet<>();
            made.sections().forEach(section -> parts.add(section.name()));
            byte[] glb = GlbWriter.writeSmall(made, parts, design.fingerprint());
            Findings pointedAt = checked ? findings() : new Findings(List.of());
            return Optional.of(RingTurntable.of(made, parts, pointedAt, glb));
        } catch (Fault fault) {
            return Optional.empty();
        }
    }

    /** The definitions with a range, in alphabetical order; those whose range or value cannot be worked out yet are left out. */
    public List<Handle> handles() {
        return Handle.of(design);
    }

    /**
     * The design with one definition's value replaced, as from a command line: {@code finger-size} and {@code US 8}. An unknown
     * name or a value of another kind is an error of the outcome.
     */
    public Outcome withValue(String name, String expression) {
        return new GivenValue(this, name, expression).outcome();
    }

    Resolution design() {
        return design;
    }

    /** With one definition in place of another of its name; nothing is kept in mind of it. */
    Workbench changed(SourceText text, Definition definition) {
        return new Workbench(definitions.changed(text, List.of(definition)), workshop, texts, story, refused);
    }
}
