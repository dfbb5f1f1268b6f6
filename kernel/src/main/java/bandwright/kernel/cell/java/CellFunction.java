// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.cell.java;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

import bandwright.design.DesignException;
import bandwright.design.Quantity;
import bandwright.design.host.Stop;
import bandwright.design.host.Stopped;
import bandwright.dsl.RingFunction;
import bandwright.dsl.Worked;
import bandwright.dsl.diagnostic.Diagnostic;

/** A function of a cell, called by ring text: one call at a time, for ring text may ask on several threads at once. */
final class CellFunction implements RingFunction.Body {
    private final String name;
    private final int arity;
    private final Function<List<Quantity>, Quantity> body;

    CellFunction(String name, int arity, Function<List<Quantity>, Quantity> body) {
        this.name = name;
        this.arity = arity;
        this.body = body;
    }

    @Override
    public synchronized Worked value(List<Worked.Worth> arguments) {
        if (arguments.size() != arity) {
            String wanted = arity == 1 ? "one value" : "two values";
            return none(Diagnostic.error("wrong-arguments", null)
                    .with(name, wanted, Integer.toString(arguments.size()))
                    .build());
        }
        List<Quantity> quantities = new ArrayList<>();
        for (Worked.Worth argument : arguments) {
            if (argument.quantity() == null) {
                return none(Diagnostic.error("wrong-kind", null)
                        .with("a number or a quantity", argument.kind())
                        .build());
            }
            quantities.add(Quantity.of(argument.quantity()));
        }
        try {
            return worked(Stop.function(() -> body.apply(quantities)));
        } catch (Stopped stopped) {
            return none(JavaErrors.error("interrupted", name + " was stopped on request", null, null, null));
        } catch (DesignException refused) {
            return new Worked(null, refused.diagnostics());
        } catch (RuntimeException | StackOverflowError failure) {
            String sentence = name + " of a cell in Java gave no value: " + JavaErrors.words(failure);
            return none(JavaErrors.error("java-exception", sentence, null, null, null));
        }
    }

    private static Worked worked(Quantity given) {
        return new Worked(new Worked.Worth(given.toString(), "", given.inLanguage(), null), List.of());
    }

    private static Worked none(Diagnostic diagnostic) {
        return new Worked(null, List.of(diagnostic));
    }
}
