// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explain;

/** How a value came about, for reading: as plain text, Markdown or HTML, one step a line, what it rests on set in below it. */
public record Explanation(Step step) {
    public String plainText() {
        StringBuilder text = new StringBuilder();
        plain(text, step, 0);
        return text.toString();
    }

    private static void plain(StringBuilder text, Step step, int depth) {
        text.append("  ".repeat(depth)).append(step.text());
        if (!step.source().isEmpty()) {
            text.append("   [").append(step.source()).append(']');
        }
        text.append('\n');
        step.parts().forEach(part -> plain(text, part, depth + 1));
    }

    /** A nested list. */
    public String markdown() {
        StringBuilder text = new StringBuilder();
        markdown(text, step, 0);
        return text.toString();
    }

    private static void markdown(StringBuilder text, Step step, int depth) {
        text.append("  ".repeat(depth)).append("- ").append(literally(step.text()));
        if (!step.source().isEmpty()) {
            text.append(" *(").append(literally(step.source())).append(")*");
        }
        text.append('\n');
        step.parts().forEach(part -> markdown(text, part, depth + 1));
    }

    /** Signs that Markdown would take for its own. */
    private static String literally(String text) {
        return text.replaceAll("([\\\\`*_\\[\\]<>|#])", "\\\\$1");
    }

    /** A nested list without style or script. */
    public String html() {
        StringBuilder text = new StringBuilder("<ul>\n");
        html(text, step);
        return text.append("</ul>\n").toString();
    }

    private static void html(StringBuilder text, Step step) {
        text.append("<li>").append(escaped(step.text()));
        if (!step.source().isEmpty()) {
            text.append(" <small>").append(escaped(step.source())).append("</small>");
        }
        if (!step.parts().isEmpty()) {
            text.append("\n<ul>\n");
            step.parts().forEach(part -> html(text, part));
            text.append("</ul>\n");
        }
        text.append("</li>\n");
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
