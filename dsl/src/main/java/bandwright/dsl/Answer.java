// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.util.List;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.explain.Explanation;
import bandwright.dsl.export.ExportFile;
import bandwright.dsl.source.Place;
import bandwright.dsl.view.Chart;
import bandwright.dsl.view.Picture;
import bandwright.dsl.view.Table;
import bandwright.dsl.view.Turntable;
import bandwright.dsl.view.drawing.Drawing;

/** What a statement that asks gets: data that any front end can show. */
public sealed interface Answer {
    /** The same in plain text, for a console or a reader who cannot see pictures. */
    String plainText();

    /**
     * A value, already as the language shows it.
     *
     * @param asked what was asked for, as the language writes it; empty where the value speaks for itself
     */
    record Words(String asked, String value) implements Answer {
        @Override
        public String plainText() {
            return asked.isEmpty() ? value : asked + " = " + value;
        }
    }

    record Tabled(Table table) implements Answer {
        @Override
        public String plainText() {
            return table.plainText();
        }
    }

    /**
     * Variants of the design.
     *
     * @param table all of them
     * @param shown the first of them, as many as a person reads
     * @param chart the same numbers as a chart's data; a drawing of it is an answer of its own; none if there are no numbers
     */
    record Varied(Table table, Table shown, @Nullable Chart chart) implements Answer {
        @Override
        public String plainText() {
            return shown.plainText();
        }

        /** All of them for a spreadsheet. */
        public String csv() {
            return table.csv();
        }
    }

    record Pictured(Picture picture) implements Answer {
        @Override
        public String plainText() {
            return picture.alternativeText();
        }
    }

    /**
     * A drawing to scale.
     *
     * @param drawing as lines and letters, for paper
     * @param svg the same as a self-contained SVG document
     * @param picture the same as pixels, for readers that do not show SVG
     */
    record Drawn(Drawing drawing, String svg, Picture picture) implements Answer {
        public String title() {
            return drawing.title();
        }

        @Override
        public String plainText() {
            return picture.alternativeText();
        }
    }

    /**
     * A model to turn by hand.
     *
     * @param picture stands in wherever it cannot be turned
     */
    record Viewed(Turntable turntable, Picture picture) implements Answer {
        @Override
        public String plainText() {
            return turntable.summary();
        }
    }

    /** The way to a value. */
    record Explained(Explanation explanation) implements Answer {
        @Override
        public String plainText() {
            return explanation.plainText();
        }

        /** A nested list for a page. */
        public String html() {
            return explanation.html();
        }

        /** A nested list for a notebook. */
        public String markdown() {
            return explanation.markdown();
        }
    }

    /**
     * Files to be written: all of them or none, where the notebook is.
     *
     * @param replace whether older files of these names may go
     * @param words what they hold
     * @param place of the name in the text
     */
    record Exported(List<ExportFile> files, boolean replace, String words, Place place) implements Answer {
        public Exported {
            files = List.copyOf(files);
        }

        @Override
        public String plainText() {
            return files.stream().map(ExportFile::name).collect(Collectors.joining(", ")) + ": " + words;
        }
    }

    /** How a {@code require} came out. */
    record Required(Requirement requirement) implements Answer {
        @Override
        public String plainText() {
            return requirement.sentence();
        }
    }

    /**
     * A condition and how it came out.
     *
     * @param text the condition as the language writes it
     * @param passed false also if it could not be worked out
     * @param measured what its first side is; absent where that says nothing more
     * @param margin by how much it passed or failed; absent where the condition has no measure of distance
     * @param because the reason given with it
     * @param trouble why it could not be worked out
     */
    record Requirement(
            String text,
            boolean passed,
            @Nullable String measured,
            @Nullable Margin margin,
            @Nullable String because,
            @Nullable String trouble) {
        /** How it came out, in a word or two. */
        public String result() {
            return trouble != null ? "not judged" : passed ? "passed" : "failed";
        }

        public String sentence() {
            StringBuilder sentence = new StringBuilder(result()).append(": ").append(text);
            if (measured != null) {
                sentence.append("; it is ").append(measured);
            }
            if (margin != null) {
                sentence.append(measured == null ? "; " : ", ")
                        .append(margin.text())
                        .append(passed ? " to spare" : " off");
            }
            if (trouble != null) {
                sentence.append(" (").append(trouble).append(')');
            }
            return because == null
                    ? sentence.toString()
                    : sentence.append(" \u2013 ").append(because).toString();
        }
    }

    /**
     * A distance from a limit, never negative.
     *
     * @param value in the unit
     * @param unit the unit's word; empty for a plain number
     * @param percent the share of the limit, or nothing where the limit is 0
     * @param text as the language shows it
     */
    record Margin(double value, String unit, @Nullable Double percent, String text) {}
}
