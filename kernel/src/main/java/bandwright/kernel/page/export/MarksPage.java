// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.export;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import bandwright.dsl.view.Table;
import bandwright.kernel.display.Decimals;
import bandwright.kernel.mark.Judgement;
import bandwright.kernel.mark.Key;
import bandwright.kernel.mark.Marked;

/** The marks of a class as one page: a table of all, then a section for each work. Whatever a work says is text on it. */
public final class MarksPage {
    private final Key key;

    private MarksPage(Key key) {
        this.key = key;
    }

    /** @param works by their names */
    public static String write(String title, Key key, Map<String, Marked> works) {
        MarksPage page = new MarksPage(key);
        StringBuilder main = new StringBuilder(page.all(works));
        int number = 0;
        for (Map.Entry<String, Marked> work : works.entrySet()) {
            number++;
            main.append(page.section("work-" + number, work.getKey(), work.getValue()));
        }
        return PageFrame.of(
                title,
                "",
                main.toString(),
                "Written by Bandwright. A key judges designs, not people; the same works give the same page.",
                false);
    }

    private String all(Map<String, Marked> works) {
        StringBuilder html = new StringBuilder("<table>\n<caption>All works</caption>\n<thead>\n<tr>"
                + "<th scope=\"col\" align=\"left\">work</th><th scope=\"col\" align=\"right\">points of "
                + number(key.points())
                + "</th><th scope=\"col\" align=\"left\">outcome</th></tr>\n</thead>\n<tbody>\n");
        int number = 0;
        for (Map.Entry<String, Marked> work : works.entrySet()) {
            number++;
            Marked marked = work.getValue();
            html.append("<tr><th scope=\"row\" align=\"left\"><a href=\"#work-")
                    .append(number)
                    .append("\">")
                    .append(Html.escape(work.getKey()))
                    .append("</a></th><td align=\"right\">")
                    .append(marked.wasMarked() ? number(marked.points(key)) : "not marked")
                    .append("</td><td align=\"left\">")
                    .append(Html.escape(outcome(marked)))
                    .append("</td></tr>\n");
        }
        return Html.frame("All works", html.append("</tbody>\n</table>\n").toString());
    }

    private static String outcome(Marked marked) {
        if (!marked.wasMarked()) {
            return marked.failure();
        }
        List<String> words = new ArrayList<>();
        if (marked.errors() > 0) {
            words.add(counted(marked.errors(), "cell") + " with an error");
        }
        if (marked.javaCells() > 0) {
            words.add(counted(marked.javaCells(), "cell") + " in Java, not run");
        }
        long failed = marked.own().size() - marked.ownPassed();
        if (failed > 0) {
            words.add(failed + " of its own " + counted(marked.own().size(), "condition") + " failed");
        }
        return words.isEmpty() ? "marked" : "marked; " + String.join("; ", words);
    }

    private static String counted(long count, String thing) {
        return count + " " + thing + (count == 1 ? "" : "s");
    }

    private String section(String id, String name, Marked marked) {
        StringBuilder html = new StringBuilder("<section aria-labelledby=\"")
                .append(id)
                .append("\">\n<h2 id=\"")
                .append(id)
                .append("\">")
                .append(Html.escape(name))
                .append("</h2>\n");
        if (!marked.title().isEmpty()) {
            html.append("<p>").append(Html.escape(marked.title())).append("</p>\n");
        }
        html.append("<p class=\"")
                .append(marked.wasMarked() ? "outcome" : "failed")
                .append("\">");
        if (marked.wasMarked()) {
            html.append(number(marked.points(key)))
                    .append(" of ")
                    .append(number(key.points()))
                    .append(" points; ");
        }
        html.append(Html.escape(outcome(marked))).append("</p>\n");
        if (marked.wasMarked()) {
            html.append(TableHtml.of(byKey(marked)));
        }
        if (!marked.own().isEmpty()) {
            html.append(TableHtml.of(own(marked)));
        }
        marked.troubles()
                .forEach(trouble -> html.append("<div class=\"trouble\">\n<pre tabindex=\"0\">")
                        .append(Html.escape(trouble.stripTrailing()))
                        .append("</pre>\n</div>\n"));
        return html.append("</section>\n").toString();
    }

    private Table byKey(Marked marked) {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < key.lines().size(); i++) {
            Key.Line line = key.lines().get(i);
            Judgement judgement = marked.key().get(i);
            rows.add(List.of(
                    line.words(),
                    result(judgement),
                    number(marked.points(key, i)) + " of " + number(line.points()),
                    judgement.says()));
        }
        return new Table(
                "By the key",
                List.of(
                        Table.Column.words("condition"),
                        Table.Column.words("result"),
                        Table.Column.numbers("points", ""),
                        Table.Column.words("by how much")),
                rows,
                List.of());
    }

    private static Table own(Marked marked) {
        return new Table(
                "Its own conditions, which bring no points",
                List.of(
                        Table.Column.words("condition"),
                        Table.Column.words("result"),
                        Table.Column.words("by how much")),
                marked.own().stream()
                        .map(judgement -> List.of(judgement.condition(), result(judgement), judgement.says()))
                        .toList(),
                List.of());
    }

    private static String result(Judgement judgement) {
        return judgement.passed() ? "passed" : "FAILED";
    }

    private static String number(double points) {
        return Decimals.plain(points, 3);
    }
}
