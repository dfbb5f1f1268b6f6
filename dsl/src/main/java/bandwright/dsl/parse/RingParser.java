// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.parse;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import org.antlr.v4.runtime.Token;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.source.Place;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.source.Span;
import bandwright.dsl.syntax.Cell;
import bandwright.dsl.syntax.Statement;

/**
 * Reads the text of a cell. The steps: words ({@link Scanner}), statements ({@link StatementCutter}), and for each
 * statement its tree ({@link StatementReader}). A slip in one statement never hides another, and no text makes it fail
 * with an exception.
 *
 * <pre>{@code
 * ParseResult result = RingParser.parse(new SourceText("cell 3", "breadth = 4.6 mm"));
 * }</pre>
 */
public final class RingParser {
    /** The longest text that is read, in characters. */
    public static final int LONGEST = 5_000_000;

    static final int MOST_STATEMENTS = 20_000;

    private RingParser() {}

    public static ParseResult parse(SourceText source) {
        Report report = new Report(source);
        List<Statement> statements = new ArrayList<>();
        Set<String> names = Set.of();
        if (source.length() > LONGEST) {
            report.add(Diagnostic.error("text-too-long", source.place(new Span(0, 1))));
        } else {
            List<Token> tokens = Scanner.scan(source, report);
            List<List<Token>> chunks = StatementCutter.cut(tokens, report);
            if (chunks.size() > MOST_STATEMENTS) {
                report.add(Diagnostic.error(
                                "too-many-statements",
                                report.place(chunks.get(MOST_STATEMENTS).get(0)))
                        .with(Integer.toString(MOST_STATEMENTS)));
                chunks = List.of();
            }
            names = NamesMeant.by(chunks);
            for (List<Token> chunk : chunks) {
                Statement statement = StatementReader.read(chunk, report);
                if (statement != null) {
                    statements.add(statement);
                }
            }
        }
        List<Diagnostic> diagnostics = report.inOrder();
        List<Statement> sound = statements.stream()
                .filter(statement -> diagnostics.stream().noneMatch(diagnostic -> liesIn(diagnostic, statement)))
                .toList();
        return new ParseResult(new Cell(sound, new Span(0, source.length())), names, diagnostics);
    }

    private static boolean liesIn(Diagnostic diagnostic, Statement statement) {
        Place place = diagnostic.place();
        return place != null
                && statement.span().start() <= place.span().start()
                && place.span().start() <= statement.span().end();
    }
}
