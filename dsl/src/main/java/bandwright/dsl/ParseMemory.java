// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import bandwright.dsl.parse.ParseResult;
import bandwright.dsl.parse.RingParser;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.syntax.Statement;

/**
 * Remembers how texts were read: after each cell all earlier ones are asked what they hang on, again and again the same texts.
 * Serves any number of threads.
 */
final class ParseMemory {
    /** More cells than are watched. */
    private static final int REMEMBERED = 400;

    private final Map<SourceText, List<Statement>> texts = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<SourceText, List<Statement>> eldest) {
            return size() > REMEMBERED;
        }
    };

    /** The statements of a text; none if it has an error. */
    synchronized List<Statement> statements(SourceText text) {
        return texts.computeIfAbsent(text, ParseMemory::read);
    }

    private static List<Statement> read(SourceText text) {
        ParseResult parsed = RingParser.parse(text);
        return parsed.hasErrors() ? List.of() : parsed.cell().statements();
    }
}
