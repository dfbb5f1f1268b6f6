// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.diagnostic.NearNames;
import bandwright.dsl.model.Fault;
import bandwright.dsl.resolve.expression.Functions;
import bandwright.dsl.resolve.expression.Measurer;
import bandwright.dsl.resolve.expression.Value;
import bandwright.dsl.source.Place;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.syntax.Argument;
import bandwright.dsl.syntax.Expression;
import bandwright.dsl.syntax.Name;

/** A measure asked for in an expression: {@code weight(shank, pattern)}. */
record MeasureCall(Resolution design, Measurer measurer, Memo memo, Expression.Call call, SourceText source) {
    Value value() {
        String word = call.function().text();
        if (!measurer.knows(word)) {
            throw unknown(word);
        }
        List<Name> names = new ArrayList<>();
        for (Argument argument : call.arguments()) {
            if (argument.name() != null || !(argument.value() instanceof Expression.Reference reference)) {
                throw noSubject(source.place(argument.span()));
            }
            names.add(reference.name());
        }
        if (names.isEmpty()) {
            throw noSubject(source.place(call.span()));
        }
        Name subject = names.get(0);
        checkSubject(subject);
        List<String> modifiers =
                names.subList(1, names.size()).stream().map(Name::text).toList();
        try {
            return design.measured(
                    subject.text(),
                    word + " " + subject.text() + " " + modifiers,
                    () -> measurer.measure(word, subject.text(), modifiers, design.around(subject.text())));
        } catch (Fault fault) {
            throw placed(fault, subject);
        }
    }

    private void checkSubject(Name subject) {
        if (design.isMeasured(subject.text())) {
            return;
        } else if (design.definitions().find(subject.text()).isPresent()) {
            throw noSubject(source.place(subject.span()));
        }
        throw new NameFaults(design.definitions()).undefined(subject.text(), source.place(subject.span()));
    }

    private Fault noSubject(Place place) {
        return new Fault(Diagnostic.error("no-subject", place)
                .with(call.function().text())
                .build());
    }

    private Fault unknown(String word) {
        List<String> known = new ArrayList<>(Functions.WORDS);
        measurer.words().stream().filter(measure -> !known.contains(measure)).forEach(known::add);
        Place place = source.place(call.function().span());
        List<String> near = NearNames.nearest(word, known);
        Diagnostic.Builder fault = Diagnostic.error("unknown-function", place).with(word);
        if (near.isEmpty()) {
            fault.expected(String.join(", ", known));
        } else {
            fault.suggest(place, near.get(0));
        }
        return new Fault(fault.build());
    }

    /** A fault of the subject itself is told where the subject stands in the text; here it only keeps the measure waiting. */
    private Fault placed(Fault fault, Name subject) {
        List<Diagnostic> shared = memo.shared(fault);
        if (!shared.isEmpty()) {
            return new Fault(shared);
        } else if (fault.diagnostics().stream().anyMatch(memo::hasTold)) {
            return NameFaults.waits(subject, source, fault);
        }
        return new Fault(fault.diagnostics().stream().map(this::placed).toList());
    }

    private Diagnostic placed(Diagnostic diagnostic) {
        return diagnostic.place() != null
                ? diagnostic
                : new Diagnostic(
                        diagnostic.code(),
                        diagnostic.severity(),
                        diagnostic.message(),
                        source.place(call.span()),
                        diagnostic.labels(),
                        diagnostic.found(),
                        diagnostic.expected(),
                        diagnostic.suggestion(),
                        diagnostic.advice());
    }
}
