// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import bandwright.dsl.parse.TextWord;
import bandwright.dsl.parse.TextWord.Role;
import bandwright.dsl.parse.TextWords;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.source.Span;

/**
 * Sets a text tidily: lines stay as they are, what is in braces is set in, the values of a block and the equals signs of
 * neighbouring definitions stand in a column, words are one space apart. No word changes, comments are kept. A text with a word
 * that is none of the language stays as it is. Formatting twice changes nothing more.
 */
public final class Formatter {
    private Formatter() {}

    public static String format(String text) {
        SourceText source = new SourceText("", text);
        List<TextWord> words = TextWords.of(source);
        if (words.stream().anyMatch(word -> word.is(Role.SLIP))) {
            return text;
        }
        List<FormattedLine> lines = lines(words);
        Columns.align(lines);
        String tidy = lines.stream().map(FormattedLine::text).collect(Collectors.joining("\n"));
        if (text.endsWith("\n") && !tidy.isEmpty()) {
            tidy += "\n";
        }
        return says(tidy).equals(says(text)) ? tidy : text;
    }

    /** What must not change. */
    private static List<String> says(String text) {
        return TextWords.of(new SourceText("", text)).stream()
                .filter(word -> !word.is(Role.LINE_END))
                .map(TextWord::text)
                .map(String::strip)
                .toList();
    }

    private static List<FormattedLine> lines(List<TextWord> words) {
        List<FormattedLine> lines = new ArrayList<>();
        List<TextWord> line = new ArrayList<>();
        int depth = 0;
        boolean goesOn = false;
        for (int at = 0; at <= words.size(); at++) {
            boolean ends = at == words.size() || words.get(at).is(Role.LINE_END);
            if (!ends) {
                line.add(words.get(at));
                continue;
            }
            boolean blank = line.isEmpty()
                    && (lines.isEmpty() || lines.get(lines.size() - 1).isBlank());
            if (!blank) {
                FormattedLine next = FormattedLine.of(line, depth, goesOn);
                lines.add(next);
                depth = Math.max(0, depth + next.opens());
                goesOn = !line.isEmpty() && next.goesOn();
            }
            line = new ArrayList<>();
        }
        while (!lines.isEmpty() && lines.get(lines.size() - 1).isBlank()) {
            lines.remove(lines.size() - 1);
        }
        return lines;
    }

    /** The space the writer left between two words. */
    static int written(Span first, Span second) {
        return second.start() - first.end();
    }
}
