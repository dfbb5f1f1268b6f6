// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.cell.java;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.jspecify.annotations.Nullable;

import jdk.jshell.DeclarationSnippet;
import jdk.jshell.JShellException;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;

import bandwright.design.Design;
import bandwright.design.host.Host;
import bandwright.design.host.Hosts;
import bandwright.design.host.Stop;
import bandwright.design.host.Stopped;
import bandwright.dsl.Answer;
import bandwright.dsl.Outcome;
import bandwright.dsl.Workbench;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.source.SourceText;
import bandwright.kernel.cell.CellConsole;

/** One run of a cell, on a thread of its own. */
final class JavaRun implements Host {
    private final JavaShell shell;
    private final JavaErrors errors;
    private final Workbench before;
    private final String cellId;
    private final JavaText text;
    private final CellConsole console;
    private final CellDesign design;
    private final List<Diagnostic> told = new ArrayList<>();
    private List<Answer> answers = List.of();
    private volatile int line = 1;

    JavaRun(JavaShell shell, Workbench before, String cellId, SourceText cell, CellConsole console) {
        this.shell = shell;
        this.errors = new JavaErrors(shell);
        this.before = before;
        this.cellId = cellId;
        this.text = new JavaText(cell);
        this.console = console;
        this.design = CellDesign.of(before, cellId, cell, () -> line, console);
    }

    /** Runs the cell. Throws {@link Stopped} where it is to stop. */
    Outcome run() {
        int loadedBefore = shell.control().loader().count();
        Hosts.put(this);
        try {
            return outcome();
        } catch (OutOfMemoryError full) {
            shell.control().loader().clearFrom(loadedBefore);
            return failed(OutOfMemory.told(text.line(line)));
        } finally {
            Hosts.remove(this);
        }
    }

    private Outcome outcome() {
        List<JavaText.Piece> pieces = text.pieces(shell.analysis());
        shell.dropOld(cellId, pieces);
        List<Snippet> declared = new ArrayList<>();
        if (!pieces.isEmpty() && shell.isBroken(pieces.get(pieces.size() - 1))) {
            // Nothing of a cell runs that cannot even be read to its end.
            pieces = pieces.subList(pieces.size() - 1, pieces.size());
        }
        for (JavaText.Piece piece : pieces) {
            Stop.check();
            line = piece.firstLine();
            Optional<Diagnostic> failure = run(piece, declared);
            if (failure.isPresent()) {
                return failed(failure.get());
            } else if (told.stream().anyMatch(Diagnostic::isError)) {
                return failed();
            }
        }
        Stop.check();
        declared.forEach(this::tellIfWaiting);
        Outcome made = shell.control().during(design::outcome);
        told.addAll(made.diagnostics());
        told.addAll(design.remarks());
        return made.hasErrors() ? failed() : new Outcome(made.workbench(), told, answers);
    }

    /** What the piece ended with, if it did not end well; what the compiler says is among what is told. */
    private Optional<Diagnostic> run(JavaText.Piece piece, List<Snippet> declared) {
        answers = List.of();
        for (SnippetEvent event : shell.eval(cellId, piece)) {
            if (event.causeSnippet() != null) {
                continue;
            }
            Snippet snippet = event.snippet();
            Throwable thrown = shell.control().thrown();
            JShellException exception = event.exception();
            if (thrown instanceof Stopped) {
                throw new Stopped();
            } else if (thrown instanceof OutOfMemoryError full) {
                throw full;
            } else if (event.status() == Snippet.Status.REJECTED) {
                told.addAll(errors.ofCompiler(piece, snippet));
            } else if (exception != null) {
                return Optional.of(errors.ofException(piece, exception, thrown));
            } else if (Values.isShown(snippet)) {
                return shown(piece);
            } else {
                declared.add(snippet);
            }
        }
        return Optional.empty();
    }

    /** To show a value may run the cell's code, such as its own {@code toString}. */
    private Optional<Diagnostic> shown(JavaText.Piece piece) {
        Object value = shell.control().value();
        try {
            answers = shell.control().during(() -> ValueAnswers.of(value));
            return Optional.empty();
        } catch (RuntimeException | StackOverflowError failure) {
            return Optional.of(
                    JavaErrors.error("java-exception", JavaErrors.words(failure), piece.line(1), null, null));
        }
    }

    private void tellIfWaiting(Snippet snippet) {
        Snippet.Status status = shell.jshell().status(snippet);
        boolean waits =
                status == Snippet.Status.RECOVERABLE_DEFINED || status == Snippet.Status.RECOVERABLE_NOT_DEFINED;
        if (waits && snippet instanceof DeclarationSnippet declaration) {
            List<String> missing =
                    shell.jshell().unresolvedDependencies(declaration).toList();
            shell.piece(snippet.id())
                    .ifPresent(piece -> told.add(JavaErrors.waiting(piece, declaration.name(), missing)));
        }
    }

    private Outcome failed(Diagnostic... more) {
        told.addAll(List.of(more));
        return new Outcome(before, told, List.of());
    }

    /** What was asked of the design, as ring text. */
    SourceText questions() {
        return design.questions();
    }

    @Override
    public Design design() {
        return design;
    }

    @Override
    public void display(@Nullable Object value) {
        ValueAnswers.of(value).forEach(console::show);
    }

    @Override
    public Optional<String> ask(String prompt, boolean hidden) {
        return console.ask(prompt, hidden);
    }

    @Override
    public void jar(Path file) {
        if (!Files.exists(file)) {
            throw new IllegalArgumentException("there is no file " + file.toAbsolutePath());
        }
        shell.addToClassPath(file.toAbsolutePath());
    }

    /** Which pieces have a value to show. */
    private static final class Values {
        static boolean isShown(Snippet snippet) {
            return switch (snippet.subKind()) {
                case TEMP_VAR_EXPRESSION_SUBKIND, VAR_VALUE_SUBKIND, OTHER_EXPRESSION_SUBKIND -> true;
                default -> false;
            };
        }
    }
}
