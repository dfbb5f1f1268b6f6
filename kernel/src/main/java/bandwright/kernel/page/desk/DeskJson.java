// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.desk;

import java.util.List;
import java.util.Locale;

import org.jspecify.annotations.Nullable;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

import bandwright.dsl.Answer;
import bandwright.dsl.Handle;
import bandwright.dsl.Outcome;
import bandwright.dsl.Report;
import bandwright.dsl.Workbench;
import bandwright.dsl.check.Finding;
import bandwright.dsl.check.Findings;
import bandwright.dsl.check.Verdict;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.diagnostic.Suggestion;
import bandwright.dsl.edit.Completion;
import bandwright.dsl.edit.Proposal;
import bandwright.dsl.source.Place;
import bandwright.kernel.cell.CellState;
import bandwright.kernel.display.Headlines;
import bandwright.kernel.notebook.CellKind;
import bandwright.kernel.notebook.NotebookCell;
import bandwright.kernel.page.export.Fragments;

/** What pages are told. Places in texts are offsets in UTF-16 units, as the browser counts. */
final class DeskJson {
    private static final JsonNodeFactory MAKE = JsonNodeFactory.instance;

    private DeskJson() {}

    /** The notebook as it stands: every cell, and all that follows from them. */
    static ObjectNode whole(OpenNotebook notebook) {
        ObjectNode node = state(notebook);
        for (JsonNode cell : node.path("cells")) {
            // A page that comes later sees what others have seen.
            notebook.shown(cell.path("id").asText()).ifPresent(html -> ((ObjectNode) cell).put("out", html));
        }
        node.put("name", notebook.name()).put("oneText", notebook.isOneText()).put("recovered", notebook.recovered());
        node.put("programs", HandOut.hasPrograms(notebook.cells()));
        if (notebook.beside() != null) {
            node.put("beside", notebook.beside());
        }
        return node;
    }

    /** The cells, and the numbers that are worked out at once. */
    static ObjectNode state(OpenNotebook notebook) {
        ObjectNode node = MAKE.objectNode();
        ArrayNode cells = node.putArray("cells");
        int place = 0;
        for (NotebookCell cell : notebook.cells()) {
            place++;
            cells.add(cell(notebook, cell, place));
        }
        node.put("back", !notebook.past().back().isEmpty());
        node.put("again", !notebook.past().again().isEmpty());
        numbers(node, notebook.design().workbench());
        ArrayNode handles = node.putArray("handles");
        for (Handle handle : notebook.design().workbench().handles()) {
            handles.add(handle(handle));
        }
        return node;
    }

    /** @param place in the notebook, from 1; cells of code are counted by themselves */
    private static ObjectNode cell(OpenNotebook notebook, NotebookCell cell, int place) {
        LiveDesign design = notebook.design();
        ObjectNode node = MAKE.objectNode()
                .put("id", cell.id())
                .put("kind", cell.kind().name().toLowerCase(Locale.ROOT))
                .put("source", cell.source());
        if (cell.kind() == CellKind.CODE) {
            node.put("number", design.number(cell.id()))
                    .put("silent", notebook.isSilent(cell.id()))
                    .put("asks", design.asks(cell.id()))
                    .put("acts", design.acts(cell.id()))
                    .put("stale", design.isStale(cell.id()));
            told(node.putArray("told"), design.told(cell.id()), cell.source());
        } else if (cell.kind() == CellKind.MARKDOWN) {
            node.put("html", Fragments.markdown(cell, place));
        }
        return node;
    }

    /** Places are told where they lie in this very text: a page would look for them, and write, in no other. */
    private static void told(ArrayNode list, List<Diagnostic> diagnostics, String source) {
        for (Diagnostic diagnostic : diagnostics) {
            ObjectNode node = list.addObject()
                    .put("severity", diagnostic.severity().name().toLowerCase(Locale.ROOT))
                    .put("message", diagnostic.message());
            Place place = diagnostic.place();
            if (place != null && place.source().text().equals(source)) {
                node.put("from", units(place.source().text(), place.span().start()));
                node.put("to", units(place.source().text(), place.span().end()));
            }
            if (diagnostic.expected() != null) {
                node.put("expected", diagnostic.expected());
            }
            if (diagnostic.advice() != null) {
                node.put("advice", diagnostic.advice());
            }
            Suggestion suggestion = diagnostic.suggestion();
            if (suggestion != null) {
                node.put("try", suggestion.text());
                Place at = suggestion.place();
                if (at != null && at.source().text().equals(source)) {
                    node.put("tryFrom", units(at.source().text(), at.span().start()));
                    node.put("tryTo", units(at.source().text(), at.span().end()));
                }
            }
        }
    }

    /** The headline numbers, each with a key that stays, so that a page can tell what has changed. */
    static void numbers(ObjectNode node, Workbench workbench) {
        Report report = workbench.numbers();
        node.put("title", report.title() == null ? "" : report.title());
        node.put("fingerprint", report.fingerprint());
        ArrayNode numbers = node.putArray("numbers");
        Headlines.finger(report).ifPresent(finger -> number(numbers, "finger", "finger", finger, null, ""));
        if (!report.parts().isEmpty()) {
            number(numbers, "weight", "metal, finished", "", report.totalWeightG(), "g");
        }
        report.parts()
                .forEach(
                        part -> number(numbers, "part " + part.name(), part.name(), part.metal(), part.weightG(), "g"));
        report.stoneRows().forEach(row -> {
            number(numbers, "count " + row.name(), row.name(), row.stone(), (double) row.count(), "stones");
            number(numbers, "carats " + row.name(), row.name(), "together", row.caratsTotal(), "ct");
            if (row.gapMm() != null) {
                number(numbers, "gap " + row.name(), row.name(), "smallest gap", row.gapMm(), "mm");
            }
        });
        ArrayNode requirements = node.putArray("requirements");
        for (Answer.Requirement requirement : report.requirements()) {
            requirements
                    .addObject()
                    .put("result", requirement.result().replace(' ', '-'))
                    .put("sentence", requirement.sentence());
        }
        // Of the whole design: they lie in no one cell.
        told(node.putArray("troubles"), report.troubles(), "");
    }

    private static void number(
            ArrayNode list, String key, String name, String words, @Nullable Double value, String unit) {
        ObjectNode node = list.addObject()
                .put("key", key)
                .put("name", name)
                .put("words", words)
                .put("unit", unit);
        if (value != null) {
            node.put("value", value);
        }
    }

    private static ObjectNode handle(Handle handle) {
        ObjectNode node = MAKE.objectNode()
                .put("name", handle.name())
                .put("value", handle.value())
                .put("low", handle.low())
                .put("high", handle.high());
        ArrayNode stops = node.putArray("stops");
        handle.stops().forEach(stops::add);
        if (handle.because() != null) {
            node.put("because", handle.because());
        }
        return node;
    }

    /** What came of a cell that was run. */
    static ObjectNode ran(OpenNotebook notebook, String id, OpenNotebook.Ran ran) {
        int number = notebook.design().number(id);
        Outcome outcome = ran.outcome();
        ObjectNode node = MAKE.objectNode().put("id", id);
        node.put("state", CellState.of(outcome).words());
        StringBuilder html = new StringBuilder();
        int count = 0;
        for (Answer answer : ran.shown().answers()) {
            html.append(Fragments.answer(answer, prefix(number, ++count)));
        }
        for (Answer answer : outcome.answers()) {
            html.append(Fragments.answer(answer, prefix(number, ++count)));
        }
        notebook.keepShown(id, html.toString());
        node.put("overtaken", false)
                .put("html", html.toString())
                .put("stale", notebook.design().isStale(id));
        told(node.putArray("told"), outcome.diagnostics(), notebook.source(id));
        return node;
    }

    private static String prefix(int number, int count) {
        return "cell-" + number + "-" + count + "-";
    }

    /** What the checks have found, what failed first. */
    static ObjectNode checks(Findings findings) {
        ObjectNode node = MAKE.objectNode().put("summary", findings.all().isEmpty() ? "" : findings.summary());
        ArrayNode list = node.putArray("findings");
        for (Finding finding : findings.all()) {
            if (finding.verdict() == Verdict.PASSED) {
                continue;
            }
            list.addObject()
                    .put("verdict", finding.verdict().word())
                    .put("title", finding.title())
                    .put("about", finding.at())
                    .put("sentence", finding.sentence())
                    .put("advice", finding.advice());
        }
        return node;
    }

    static ObjectNode completion(String text, Completion completion) {
        ObjectNode node = MAKE.objectNode()
                .put("from", units(text, completion.replaced().start()))
                .put("to", units(text, completion.replaced().end()));
        ArrayNode options = node.putArray("options");
        for (Proposal proposal : completion.proposals()) {
            options.addObject()
                    .put("label", proposal.text())
                    .put("detail", proposal.detail())
                    .put("type", proposal.sort().name().toLowerCase(Locale.ROOT));
        }
        return node;
    }

    /** From code points to UTF-16 units. */
    static int units(String text, int codePoints) {
        int all = text.codePointCount(0, text.length());
        return text.offsetByCodePoints(0, Math.max(0, Math.min(codePoints, all)));
    }
}
