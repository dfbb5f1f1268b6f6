// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve;

import java.util.List;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.model.Design;
import bandwright.dsl.model.Fault;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.resolve.expression.Measurer;
import bandwright.dsl.resolve.expression.Value;

/** Gives the same figures for every ring, yet asks for all it would need. */
final class StubMeasurer implements Measurer {
    @Override
    public boolean knows(String word) {
        return words().contains(word);
    }

    @Override
    public List<String> words() {
        return List.of("weight", "wall", "gap", "count", "density");
    }

    @Override
    public Value measure(String word, String subject, List<String> modifiers, Design design) {
        int things = design.bands().size()
                + design.grooves().size()
                + design.seats().size()
                + design.stoneRows().size()
                + design.prongs().size();
        return switch (word) {
            case "weight" -> new Value.Amount(Quantity.grams(modifiers.contains("pattern") ? 6 : 5));
            case "wall" -> new Value.Amount(Quantity.millimetres(0.8));
            case "gap" -> new Value.Amount(Quantity.millimetres(0.15));
            case "count" -> Value.number(things);
            default ->
                throw new Fault(Diagnostic.error("not-on-file", null)
                        .with(word, subject)
                        .build());
        };
    }
}
