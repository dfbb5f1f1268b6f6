// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.cell.java;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BinaryOperator;
import java.util.function.IntSupplier;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;

import bandwright.design.Design;
import bandwright.design.DesignException;
import bandwright.design.Quantity;
import bandwright.design.Shown;
import bandwright.dsl.Outcome;
import bandwright.dsl.RingFunction;
import bandwright.dsl.Workbench;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.diagnostic.Severity;
import bandwright.dsl.source.SourceText;
import bandwright.kernel.cell.CellConsole;

/**
 * The design while a cell runs. What the cell does to it is written down as ring text, and the design is always what it would be had
 * the cell held that text. Each statement stands on the line of the cell that made it.
 */
final class CellDesign extends AskedDesign implements Design {
    private static final Pattern NAME = Pattern.compile("\\p{L}[\\p{L}\\p{N}]*(-[\\p{L}\\p{N}]+)*");
    private static final String QUESTION = "what a cell in Java asks";

    private final Workbench before;
    private final String cellId;
    private final SourceText cell;
    private final IntSupplier line;
    private final CellConsole console;
    private final Set<String> asked;
    private final List<Diagnostic> remarks = new ArrayList<>();
    private List<Piece> pieces = List.of();
    private Map<String, RingFunction> functions = Map.of();
    private Outcome outcome;

    /** A piece of ring text. */
    private record Piece(int line, String name, String text) {}

    private CellDesign(
            Workbench before,
            String cellId,
            SourceText cell,
            IntSupplier line,
            CellConsole console,
            Set<String> asked) {
        super(new Workhand(), asked);
        this.before = before;
        this.cellId = cellId;
        this.cell = cell;
        this.line = line;
        this.console = console;
        this.asked = asked;
        this.outcome = new Outcome(before, List.of(), List.of());
    }

    /** @param line the line of the cell that runs now */
    static CellDesign of(Workbench before, String cellId, SourceText cell, IntSupplier line, CellConsole console) {
        // On a workbench of its own: a thread that is given up may still read it.
        return new CellDesign(before.without(""), cellId, cell, line, console, new LinkedHashSet<>());
    }

    @Override
    synchronized Workbench workbench() {
        return outcome.workbench();
    }

    @Override
    public void set(String name, String expression) {
        put(name, name + " = " + expression);
    }

    @Override
    public void set(String name, String expression, String because) {
        String reason = because.replace('"', '\'').replaceAll("\\R", " ");
        put(name, name + " = " + expression + " because \"" + reason + "\"");
    }

    private void put(String name, String statement) {
        stage(new Piece(line.getAsInt(), name, statement));
    }

    @Override
    public Shown run(String ringText) {
        Workbench then = workbench();
        stage(new Piece(line.getAsInt(), "", ringText));
        Outcome answered = work(present -> then.run(QUESTION, new SourceText(cell.name(), ringText), console::working));
        answered.diagnostics().stream()
                .filter(told -> told.severity() == Severity.WARNING)
                .forEach(remarks::add);
        return new Shown(answered.answers());
    }

    @Override
    public void function(String name, UnaryOperator<Quantity> function) {
        give(name, new CellFunction(name, 1, values -> function.apply(values.get(0))));
    }

    @Override
    public void function(String name, BinaryOperator<Quantity> function) {
        give(name, new CellFunction(name, 2, values -> function.apply(values.get(0), values.get(1))));
    }

    private synchronized void give(String name, CellFunction function) {
        if (!NAME.matcher(name).matches() || workbench().isCall(name)) {
            String sentence = NAME.matcher(name).matches()
                    ? name + " is a word of ring text already"
                    : name + " is no name of ring text: letters, digits and single hyphens";
            throw new DesignException(List.of(JavaErrors.error("function-name", sentence, null, null, null)));
        }
        Map<String, RingFunction> next = new TreeMap<>(functions);
        next.put(name, new RingFunction(name, cell.text(), function));
        outcome = staged(pieces, next);
        functions = next;
    }

    private Outcome staged(List<Piece> nextPieces, Map<String, RingFunction> nextFunctions) {
        SourceText text = new SourceText(cell.name(), written(nextPieces));
        List<RingFunction> given = List.copyOf(nextFunctions.values());
        Outcome staged = work(present -> before.define(cellId, text, given));
        if (staged.hasErrors()) {
            throw new DesignException(staged.diagnostics());
        }
        return staged;
    }

    /** With one more piece; a name that the cell has already defined is defined anew. */
    private synchronized void stage(Piece piece) {
        List<Piece> next = new ArrayList<>(pieces);
        if (!piece.name().isEmpty()) {
            next.removeIf(old -> old.name().equals(piece.name()));
        }
        next.add(piece);
        outcome = staged(next, functions);
        pieces = next;
    }

    private static String written(List<Piece> pieces) {
        StringBuilder text = new StringBuilder();
        int line = 1;
        for (Piece piece :
                pieces.stream().sorted(Comparator.comparingInt(Piece::line)).toList()) {
            text.append("\n".repeat(Math.max(0, piece.line() - line)));
            line = Math.max(line, piece.line());
            text.append(piece.text()).append('\n');
            line += (int) piece.text().lines().count();
        }
        return text.toString();
    }

    /** What the cell has done to the design. */
    Outcome outcome() {
        if (pieces.isEmpty() && functions.isEmpty()) {
            // What the cell made when it ran before is taken away.
            outcome = work(present -> before.define(cellId, new SourceText(cell.name(), "")));
        }
        return outcome;
    }

    /** Warnings about what was asked in passing. */
    List<Diagnostic> remarks() {
        return List.copyOf(remarks);
    }

    /** What was asked of the design, as ring text. */
    SourceText questions() {
        synchronized (asked) {
            return new SourceText(cell.name(), String.join("\n", asked));
        }
    }
}
