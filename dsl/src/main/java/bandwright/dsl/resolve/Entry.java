// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve;

import java.util.List;
import java.util.Optional;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.source.Place;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.source.Span;
import bandwright.dsl.syntax.Definition;
import bandwright.dsl.syntax.Limit;
import bandwright.dsl.syntax.Measured;
import bandwright.dsl.syntax.Node;
import bandwright.dsl.syntax.Option;
import bandwright.dsl.syntax.Printer;
import bandwright.dsl.syntax.Require;
import bandwright.dsl.syntax.Statement;
import bandwright.dsl.syntax.Title;

/**
 * A statement that holds until it is replaced, with the cell that made it.
 *
 * @param limits the definition it stands in for while a question is answered, whose range still holds; else null
 */
public record Entry(
        String cellId,
        SourceText source,
        Statement statement,
        @Nullable Entry limits) {
    Entry(String cellId, SourceText source, Statement statement) {
        this(cellId, source, statement, null);
    }

    /** Whether a statement is kept; the others ask, are answered and leave no trace. */
    static boolean isKept(Statement statement) {
        return !Made.by(statement).isEmpty()
                || statement instanceof Title
                || statement instanceof Require
                || statement instanceof Limit
                || statement instanceof Measured;
    }

    /** All that it makes, its own name first; empty for {@code title}, {@code require}, {@code limit} and {@code measured}. */
    public List<Made> made() {
        return Made.by(statement);
    }

    /** Where its name stands, or all of it if it has none. */
    public Place place() {
        List<Made> made = made();
        return source.place(made.isEmpty() ? statement.span() : made.get(0).span());
    }

    public Place place(Node node) {
        return place(node.span());
    }

    public Place place(Span span) {
        return source.place(span);
    }

    /** The reason given with it. */
    public Optional<String> because() {
        return Made.because(statement);
    }

    /** Its canonical text, which ends with a line end. */
    public String text() {
        return Printer.print(statement);
    }

    /** What it says, in short: the value of a definition, else its canonical text. */
    public String said() {
        return statement instanceof Definition definition ? Printer.print(definition.value()) : text().strip();
    }

    /** Two entries of one key cannot both hold, and the later replaces the earlier without a word. */
    String askedAgain() {
        if (statement instanceof Title) {
            return "title";
        } else if (statement instanceof Require require) {
            return "require " + Printer.print(require.condition());
        } else if (statement instanceof Limit limit) {
            return "limit " + limit.name();
        } else if (statement instanceof Measured measured) {
            return "measured " + Printer.print(measured.measure());
        } else if (statement instanceof Option option) {
            return "option " + option.name();
        }
        return "";
    }
}
