// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.cell.java;

import java.io.File;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import jdk.jshell.ImportSnippet;
import jdk.jshell.JShell;
import jdk.jshell.PersistentSnippet;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.VarSnippet;
import jdk.jshell.spi.ExecutionControl;
import jdk.jshell.spi.ExecutionControlProvider;
import jdk.jshell.spi.ExecutionEnv;

import bandwright.design.Cell;
import bandwright.dsl.Workbench;

/** A JShell that has our imports and our design on its class path, and knows which cell each of its snippets came from. */
final class JavaShell implements AutoCloseable {
    private static final List<String> IMPORTS = List.of(
            "import java.math.*;",
            "import java.util.*;",
            "import java.util.function.*;",
            "import java.util.stream.*;",
            "import bandwright.design.*;",
            "import static bandwright.design.Cell.*;",
            "import static bandwright.design.Units.*;",
            "import bandwright.dsl.view.Chart;",
            "import bandwright.dsl.view.Table;");

    private final CellControl control = new CellControl(new CellLoader(JavaShell.class.getClassLoader()));
    private final JShell shell;
    private final Map<String, JavaText.Piece> places = new HashMap<>();
    private final Map<String, List<Snippet>> byCell = new LinkedHashMap<>();

    JavaShell() {
        shell = JShell.builder()
                .executionEngine(new InThisProcess(control), Map.of())
                .build();
        classPath().forEach(shell::addToClasspath);
        IMPORTS.forEach(shell::eval);
    }

    private record InThisProcess(CellControl control) implements ExecutionControlProvider {
        @Override
        public String name() {
            return "bandwright";
        }

        @Override
        public ExecutionControl generate(ExecutionEnv environment, Map<String, String> parameters) {
            return control;
        }
    }

    /** Where our own classes are: the runnable jar, or folders while the program is being built. */
    private static Set<String> classPath() {
        Set<String> paths = new LinkedHashSet<>();
        for (Class<?> one : List.of(Cell.class, Workbench.class)) {
            CodeSource source = one.getProtectionDomain().getCodeSource();
            try {
                paths.add(Path.of(source.getLocation().toURI()).toString());
            } catch (URISyntaxException failure) {
                throw new IllegalStateException("our own classes are nowhere", failure);
            }
        }
        return paths;
    }

    CellControl control() {
        return control;
    }

    SourceCodeAnalysis analysis() {
        return shell.sourceCodeAnalysis();
    }

    JShell jshell() {
        return shell;
    }

    void addToClassPath(Path path) {
        String text = path.toString();
        if (text.contains(File.pathSeparator)) {
            throw new IllegalArgumentException("a path with '" + File.pathSeparator + "' cannot be used: " + text);
        }
        shell.addToClasspath(text);
    }

    /** Whether a piece breaks the grammar or has no end. */
    boolean isBroken(JavaText.Piece piece) {
        return switch (analysis().analyzeCompletion(piece.code()).completeness()) {
            case UNKNOWN, DEFINITELY_INCOMPLETE -> true;
            case COMPLETE, COMPLETE_WITH_SEMI, CONSIDERED_INCOMPLETE, EMPTY -> false;
        };
    }

    /** Runs a piece of a cell's code. */
    List<SnippetEvent> eval(String cellId, JavaText.Piece piece) {
        control.reset();
        List<SnippetEvent> events = shell.eval(piece.code());
        for (SnippetEvent event : events) {
            Snippet snippet = event.snippet();
            if (event.causeSnippet() == null) {
                places.put(snippet.id(), piece);
                byCell.computeIfAbsent(cellId, id -> new ArrayList<>()).add(snippet);
                if (snippet instanceof VarSnippet variable) {
                    control.loader().clearOld(variable.name(), false);
                }
            }
        }
        return events;
    }

    /** The piece that a snippet came from. */
    Optional<JavaText.Piece> piece(String snippetId) {
        return Optional.ofNullable(places.get(snippetId));
    }

    /** Takes away what a cell declared when it ran before, but not what it declares again: that would lose what hangs on it. */
    void dropOld(String cellId, List<JavaText.Piece> next) {
        List<Snippet> old = byCell.remove(cellId);
        if (old == null) {
            return;
        }
        Set<String> again = new LinkedHashSet<>();
        for (JavaText.Piece piece : next) {
            shell.sourceCodeAnalysis().sourceToSnippets(piece.code()).forEach(snippet -> again.add(key(snippet)));
        }
        for (Snippet snippet : old) {
            boolean stands = shell.status(snippet).isActive();
            if (stands && !again.contains(key(snippet)) && snippet instanceof PersistentSnippet) {
                shell.drop(snippet);
                if (snippet instanceof VarSnippet variable) {
                    control.loader().clearOld(variable.name(), true);
                }
            }
        }
    }

    private static String key(Snippet snippet) {
        if (snippet instanceof ImportSnippet imported) {
            return "import " + imported.fullname();
        } else if (snippet instanceof PersistentSnippet declared) {
            return snippet.kind() + " " + declared.name();
        }
        return "";
    }

    @Override
    public void close() {
        shell.close();
    }
}
