// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.cell.java;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

import org.jspecify.annotations.Nullable;

import jdk.jshell.Diag;
import jdk.jshell.EvalException;
import jdk.jshell.JShellException;
import jdk.jshell.Snippet;

import bandwright.design.DesignException;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.diagnostic.Severity;
import bandwright.dsl.source.Place;

/** What Java says about a cell, as diagnostics of the cell. */
final class JavaErrors {
    private static final int MOST_CALLERS = 8;
    /** Where names come from that everybody knows without. */
    private static final Pattern KNOWN =
            Pattern.compile("\\b(java\\.(lang|util|util\\.function|util\\.stream)|bandwright\\.design)\\.(?=[A-Z])");

    private final JavaShell shell;

    JavaErrors(JavaShell shell) {
        this.shell = shell;
    }

    /** What the compiler says about a piece that it refused. */
    List<Diagnostic> ofCompiler(JavaText.Piece piece, Snippet snippet) {
        List<Diagnostic> told = new ArrayList<>();
        shell.jshell().diagnostics(snippet).filter(Diag::isError).forEach(diag -> {
            List<String> lines = KNOWN.matcher(diag.getMessage(Locale.ROOT))
                    .replaceAll("")
                    .lines()
                    .map(String::strip)
                    .filter(line -> !line.isEmpty())
                    .toList();
            String found = lines.size() < 2 ? null : String.join("\n", lines.subList(1, lines.size()));
            Place place = piece.place((int) diag.getStartPosition(), (int) diag.getEndPosition());
            told.add(error("java-compile", lines.isEmpty() ? "this is no Java" : lines.get(0), place, found, null));
        });
        if (told.isEmpty()) {
            told.add(error("java-compile", "this cannot be compiled", piece.line(1), null, null));
        }
        return told;
    }

    /** Something that a piece declares and that waits for what is not there. */
    static Diagnostic waiting(JavaText.Piece piece, String name, List<String> missing) {
        String message = name + " cannot be used before there is " + String.join(", ", missing);
        return new Diagnostic(
                "java-waits", Severity.WARNING, message, piece.line(1), List.of(), null, null, null, null);
    }

    /** What a piece ended with. */
    Diagnostic ofException(JavaText.Piece piece, JShellException told, @Nullable Throwable thrown) {
        List<Place> lines = lines(told);
        Place place = lines.isEmpty() ? piece.line(1) : lines.get(0);
        String callers = callers(lines);
        if (thrown instanceof DesignException refused) {
            return ofDesign(refused, place, callers);
        } else if (thrown instanceof StackOverflowError) {
            return error(
                    "java-exception",
                    "StackOverflowError: methods call each other deeper than Java can follow",
                    place,
                    null,
                    "Look for a method that calls itself without an end.");
        } else if (thrown == null) {
            String message = told.getMessage() == null ? told.getClass().getSimpleName() : told.getMessage();
            return error("java-waits", message, place, null, callers);
        }
        String causes = causes(thrown);
        return error("java-exception", words(thrown), place, causes.isEmpty() ? null : causes, callers);
    }

    private static Diagnostic ofDesign(DesignException refused, Place place, @Nullable String callers) {
        Diagnostic first = refused.diagnostics().stream()
                .filter(Diagnostic::isError)
                .findFirst()
                .orElse(refused.diagnostics().get(0));
        // The places are in text that the cell put together; what it says helps, and so does the line of Java.
        Place inText = first.place();
        String found = first.found() != null
                ? first.found()
                : inText == null
                        ? null
                        : inText.source().lineText(inText.line()).strip();
        return new Diagnostic(
                first.code(),
                Severity.ERROR,
                first.message(),
                place,
                List.of(),
                found,
                first.expected(),
                first.suggestion() == null
                        ? null
                        : new bandwright.dsl.diagnostic.Suggestion(
                                null, first.suggestion().shown()),
                callers != null ? callers : first.advice());
    }

    /** Class and message, as people read them. */
    static String words(Throwable thrown) {
        String name = thrown.getClass().getSimpleName();
        String message = thrown.getLocalizedMessage();
        return message == null ? name : name + ": " + message.strip();
    }

    private static String causes(Throwable thrown) {
        StringBuilder causes = new StringBuilder();
        Throwable cause = thrown.getCause();
        for (int depth = 0; cause != null && depth < MOST_CALLERS; depth++) {
            causes.append(causes.isEmpty() ? "" : "\n").append("caused by ").append(words(cause));
            cause = cause.getCause();
        }
        return causes.toString();
    }

    private static @Nullable String callers(List<Place> lines) {
        if (lines.size() < 2) {
            return null;
        }
        StringBuilder callers = new StringBuilder("Called from");
        for (Place place : lines.subList(1, Math.min(lines.size(), MOST_CALLERS))) {
            callers.append(callers.length() < 12 ? " " : ", from ")
                    .append(place.source().name())
                    .append(", line ")
                    .append(place.line());
        }
        return callers.append('.').toString();
    }

    /** The user's own lines, the innermost first. */
    private List<Place> lines(JShellException told) {
        List<Place> lines = new ArrayList<>();
        for (StackTraceElement frame : told.getStackTrace()) {
            String file = frame.getFileName();
            if (file == null || !file.startsWith("#") || frame.getLineNumber() < 1) {
                continue;
            }
            Optional<JavaText.Piece> piece = shell.piece(file.substring(1));
            piece.ifPresent(known -> {
                Place place = known.line(frame.getLineNumber());
                if (lines.isEmpty() || !lines.get(lines.size() - 1).equals(place)) {
                    lines.add(place);
                }
            });
        }
        if (lines.isEmpty() && told.getCause() instanceof EvalException cause) {
            return lines(cause);
        }
        return lines;
    }

    static Diagnostic error(
            String code, String message, @Nullable Place place, @Nullable String found, @Nullable String advice) {
        return new Diagnostic(code, Severity.ERROR, message, place, List.of(), found, null, null, advice);
    }
}
