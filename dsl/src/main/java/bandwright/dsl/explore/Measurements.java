// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explore;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import bandwright.dsl.construct.Workshop;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.model.Fault;
import bandwright.dsl.resolve.Entry;
import bandwright.dsl.resolve.Resolution;
import bandwright.dsl.resolve.expression.Value;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.syntax.Expression;
import bandwright.dsl.syntax.Measured;
import bandwright.dsl.syntax.Printer;
import bandwright.dsl.view.Table;

/** Real figures beside the computed ones. */
record Measurements(Resolution design, Workshop workshop) {
    /** One figure, how far the computed one is off, and what would explain it. */
    Table table(Measured measured, SourceText source) {
        Value computed = design.evaluate(measured.measure(), source);
        Value real = design.evaluate(measured.value(), source);
        if (!computed.kind().equals(real.kind())) {
            throw new Fault(Diagnostic.error(
                            "unit-mismatch", source.place(measured.measure().span()))
                    .with(computed.kind(), real.kind(), "compared")
                    .label(source.place(measured.measure().span()), computed.kind())
                    .label(source.place(measured.value().span()), real.kind())
                    .build());
        }
        List<String> notes = new ArrayList<>();
        Optional.ofNullable(measured.because()).ifPresent(because -> notes.add(because.reason()));
        new Explanations(design, workshop, source, measured.measure(), computed, real)
                .sentences()
                .forEach(sentence -> notes.add("Suggestion: " + sentence));
        return table("Measured and computed", List.of(row(measured, computed, real)), notes);
    }

    /** All figures that are kept; those that cannot be compared now are left out. */
    Optional<Table> all() {
        List<List<String>> rows = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        for (Entry entry : design.definitions().measured()) {
            Measured measured = (Measured) entry.statement();
            try {
                rows.add(row(
                        measured,
                        design.evaluate(measured.measure(), entry.source()),
                        design.evaluate(measured.value(), entry.source())));
                entry.because().ifPresent(because -> notes.add(Printer.print(measured.measure()) + ": " + because));
            } catch (Fault fault) {
                notes.add(Printer.print(measured.measure()) + ": "
                        + fault.diagnostics().get(0).message());
            }
        }
        return rows.isEmpty() ? Optional.empty() : Optional.of(table("Measured and computed", rows, notes));
    }

    /** What was measured of an expression, in words; empty if nothing was. */
    Optional<String> words(Expression asked) {
        String text = Printer.print(asked instanceof Expression.InUnit inUnit ? inUnit.value() : asked);
        for (Entry entry : design.definitions().measured()) {
            Measured measured = (Measured) entry.statement();
            if (Printer.print(measured.measure()).equals(text)) {
                return Optional.of(words(measured, entry));
            }
        }
        return Optional.empty();
    }

    private String words(Measured measured, Entry entry) {
        Optional<Value> computed = Optional.of(design.evaluate(measured.measure(), entry.source()));
        Optional<Value> real = Optional.of(design.evaluate(measured.value(), entry.source()));
        String difference = Texts.difference(computed, real);
        String percent = Texts.percent(computed, real);
        return "measured " + Texts.text(real)
                + (difference.isEmpty() ? "" : ", " + difference)
                + (percent.isEmpty() ? "" : ", " + percent)
                + entry.because().map(because -> " (" + because + ")").orElse("");
    }

    private static List<String> row(Measured measured, Value computed, Value real) {
        return List.of(
                Printer.print(measured.measure()),
                computed.text(),
                real.text(),
                Texts.difference(Optional.of(computed), Optional.of(real)),
                Texts.percent(Optional.of(computed), Optional.of(real)));
    }

    private static Table table(String title, List<List<String>> rows, List<String> notes) {
        return new Table(
                title,
                List.of(
                        Table.Column.words("what"),
                        Table.Column.numbers("computed", ""),
                        Table.Column.numbers("measured", ""),
                        Table.Column.numbers("difference", ""),
                        Table.Column.numbers("per cent", "")),
                rows,
                notes);
    }
}
