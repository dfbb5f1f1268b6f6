// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.diagnostic;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import bandwright.dsl.source.Place;
import bandwright.dsl.source.SourceText;

/**
 * The lines a diagnostic speaks of, with carets and labels. Texts come in the order the labels name them, the primary
 * one first; within a text, lines come in order, and a text other than the first opens with its own arrow.
 */
final class Excerpt {
    private final Place primary;
    private final Map<SourceText, TreeMap<Integer, List<Label>>> texts = new LinkedHashMap<>();

    Excerpt(Place primary, List<Label> labels) {
        this.primary = primary;
        if (labels.stream().noneMatch(label -> label.place().equals(primary))) {
            add(new Label(primary, ""));
        }
        // The primary text is to come first even when another is labelled before it.
        texts.computeIfAbsent(primary.source(), source -> new TreeMap<>());
        labels.forEach(this::add);
    }

    private void add(Label label) {
        texts.computeIfAbsent(label.place().source(), source -> new TreeMap<>())
                .computeIfAbsent(label.place().line(), line -> new ArrayList<>())
                .add(label);
    }

    @Override
    public String toString() {
        int lastLine = texts.values().stream().mapToInt(TreeMap::lastKey).max().orElse(1);
        int width = Integer.toString(lastLine).length();
        StringBuilder text = new StringBuilder();
        texts.forEach((source, lines) -> {
            List<Label> first = lines.firstEntry().getValue();
            Place head =
                    source.equals(primary.source()) ? primary : first.get(0).place();
            text.append(" ".repeat(width + 1)).append("--> ").append(head).append('\n');
            lines.forEach((line, labels) -> line(text, source.lineText(line), line, labels, width));
        });
        return text.toString();
    }

    private static void line(StringBuilder text, String content, int number, List<Label> labels, int width) {
        List<Label> ordered = new ArrayList<>(labels);
        ordered.sort(Comparator.comparingInt(label -> label.place().column()));
        String count = Integer.toString(number);
        String gutter = " ".repeat(width) + " | ";
        Window window = Window.round(content, ordered.get(0).place().column() - 1);
        text.append(" ".repeat(width - count.length()))
                .append((count + " | " + window.of(content, true)).stripTrailing())
                .append('\n');
        Label last = ordered.get(ordered.size() - 1);
        String carets = carets(content, ordered) + (last.text().isEmpty() ? "" : " " + last.text());
        text.append(gutter).append(window.of(carets, false).stripTrailing()).append('\n');
        for (int at = ordered.size() - 2; at >= 0; at--) {
            Label label = ordered.get(at);
            if (!label.text().isEmpty()) {
                String row = blank(content, label.place().column() - 1) + label.text();
                text.append(gutter).append(window.of(row, false)).append('\n');
            }
        }
    }

    /** What is shown of a line too long for a screen, in code points. */
    private record Window(int from, int to) {
        private static final int LONGEST = 200;
        private static final int BEFORE = 60;

        static Window round(String content, int start) {
            int length = content.codePointCount(0, content.length());
            int from = length <= LONGEST ? 0 : Math.max(0, Math.min(start - BEFORE, length - LONGEST));
            return new Window(from, length <= LONGEST ? Integer.MAX_VALUE : from + LONGEST);
        }

        /** The part of a row that is shown; dots stand where the line itself goes on. */
        String of(String row, boolean dotted) {
            int length = row.codePointCount(0, row.length());
            if (from == 0 && length <= to) {
                return row;
            } else if (from >= length) {
                return "";
            }
            String part =
                    row.substring(row.offsetByCodePoints(0, from), row.offsetByCodePoints(0, Math.min(to, length)));
            return (dotted && from > 0 ? "\u2026" + part.substring(part.offsetByCodePoints(0, 1)) : part)
                    + (dotted && to < length ? "\u2026" : "");
        }
    }

    /** Carets under all places; a place that goes on below the line is underlined to the line's end. */
    private static String carets(String content, List<Label> labels) {
        int length = content.codePointCount(0, content.length());
        StringBuilder carets = new StringBuilder();
        int column = 0;
        for (Label label : labels) {
            int start = label.place().column() - 1;
            int end = Math.max(start + 1, Math.min(start + label.place().span().length(), length));
            if (start > column) {
                carets.append(blank(content, start), carets.length(), start);
                column = start;
            }
            if (end > column) {
                carets.append("^".repeat(end - column));
                column = end;
            }
        }
        return carets.toString();
    }

    /** As wide as the first characters of the line: a tab stays a tab, all else is a space. */
    private static String blank(String content, int characters) {
        StringBuilder blank = new StringBuilder();
        content.codePoints().limit(characters).forEach(point -> blank.append(point == '\t' ? '\t' : ' '));
        return blank.append(" ".repeat(characters - blank.length())).toString();
    }
}
