// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.diagnostic.NearNames;
import bandwright.dsl.diagnostic.Severity;
import bandwright.dsl.model.Fault;
import bandwright.dsl.parse.ParseResult;
import bandwright.dsl.parse.RingParser;
import bandwright.dsl.resolve.Kind;
import bandwright.dsl.resolve.expression.Value;
import bandwright.dsl.source.Place;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.syntax.Definition;
import bandwright.dsl.syntax.Statement;

/** One definition's value given from outside, in place of its own: taken whole, or refused with the reason. */
final class GivenValue {
    private final Workbench workbench;
    private final String name;
    private final String expression;

    GivenValue(Workbench workbench, String name, String expression) {
        this.workbench = workbench;
        this.name = name;
        this.expression = expression;
    }

    Outcome outcome() {
        SourceText text = new SourceText("the given value", name + " = " + expression);
        ParseResult parsed = RingParser.parse(text);
        if (parsed.hasErrors()) {
            return new Outcome(workbench, parsed.diagnostics(), List.of());
        }
        List<Statement> statements = parsed.cell().statements();
        if (statements.size() != 1 || !(statements.get(0) instanceof Definition definition)) {
            return refused(
                    Diagnostic.error("given-no-value", null).with(text.text()).build());
        }
        Place named = text.place(definition.name().span());
        if (workbench.design().definitions().kind(definition.name().text()).orElse(null) != Kind.DEFINITION) {
            Diagnostic.Builder unknown =
                    Diagnostic.error("given-unknown-name", named).with(name);
            List<String> known = workbench.design().definitions().names(Kind.DEFINITION);
            List<String> near = NearNames.nearest(name, known);
            return refused(
                    (near.isEmpty() ? unknown.expected(String.join(", ", known)) : unknown.suggest(named, near.get(0)))
                            .build());
        }
        Workbench next = workbench.changed(text, definition);
        try {
            Value old = workbench.design().valueOf(name);
            Value given = next.design().valueOf(name);
            if (!old.kind().equals(given.kind())) {
                return refused(Diagnostic.error(
                                "given-wrong-kind",
                                text.place(definition.value().span()))
                        .with(name, old.kind(), given.kind())
                        .build());
            }
        } catch (Fault fault) {
            return refused(fault.diagnostics(), text);
        }
        List<Diagnostic> told = next.newFaults(workbench, text);
        boolean sound = told.stream().allMatch(diagnostic -> diagnostic.severity() == Severity.NOTE);
        return sound ? new Outcome(next, told, List.of()) : refused(told, text);
    }

    /** A given value is all or nothing: what would only wait in a cell is an error here. */
    private Outcome refused(List<Diagnostic> reasons, SourceText text) {
        List<Diagnostic> told = new ArrayList<>(reasons);
        if (told.stream().noneMatch(Diagnostic::isError)) {
            told.add(Diagnostic.error("given-not-worked-out", null)
                    .with(name, text.text())
                    .build());
        }
        return new Outcome(workbench, told, List.of());
    }

    private Outcome refused(Diagnostic diagnostic) {
        return new Outcome(workbench, List.of(diagnostic), List.of());
    }
}
