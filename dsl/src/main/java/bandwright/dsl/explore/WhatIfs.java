// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explore;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import bandwright.dsl.construct.Workshop;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.resolve.Resolution;
import bandwright.dsl.resolve.expression.Faults;
import bandwright.dsl.resolve.expression.Value;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.syntax.Change;
import bandwright.dsl.syntax.WhatIf;
import bandwright.dsl.view.Table;

/** Compares the design with one in which some definitions are worth something else, each worked out in the design as it is. */
record WhatIfs(Resolution design, Workshop workshop, SourceText source) {
    Table table(WhatIf whatIf) {
        Map<String, Value> values = values(whatIf);
        Question question = Question.of(design, whatIf.asked(), source, whatIf.span());
        VariantWorker worker = new VariantWorker(question, workshop, values.keySet());
        Side before = new Side("before", question.design(), Map.of(), worker.work(Map.of()));
        Variant then = worker.work(values);
        worker.refuseHopeless(List.of(then));
        Side after = new Side("after", question.design().withValues(values), values, then);
        return new Comparison(question, List.copyOf(values.keySet()), List.of(before, after))
                .beforeAndAfter("What if " + String.join(", ", values.keySet())
                        + (values.size() == 1 ? " changes" : " change"));
    }

    private Map<String, Value> values(WhatIf whatIf) {
        Faults faults = new Faults();
        AxisReader reader = new AxisReader(design, source);
        Map<String, Value> values = new LinkedHashMap<>();
        for (Change change : whatIf.changes()) {
            String name = change.name().text();
            if (values.containsKey(name)) {
                faults.add(Diagnostic.error(
                                "named-twice", source.place(change.name().span()))
                        .with(name));
            }
            faults.attempt(() -> reader.given(name, change.value(), design.definitionNamed(change.name(), source)))
                    .ifPresent(value -> values.put(name, value));
        }
        faults.raise();
        return values;
    }
}
