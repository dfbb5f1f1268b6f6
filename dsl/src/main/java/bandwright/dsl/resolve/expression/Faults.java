// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve.expression;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleSupplier;
import java.util.function.Supplier;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.model.Fault;

/** Gathers what is wrong with one statement, so that all of it is told and not the first alone. */
public final class Faults {
    private final Set<Diagnostic> diagnostics = new LinkedHashSet<>();

    /** What an action gives, or nothing if it failed; then its fault is kept. */
    public <T> Optional<T> attempt(Supplier<T> action) {
        try {
            return Optional.of(action.get());
        } catch (Fault fault) {
            diagnostics.addAll(fault.diagnostics());
            return Optional.empty();
        }
    }

    /** What an action gives, or not-a-number if it failed; then its fault is kept. */
    public double number(DoubleSupplier action) {
        return attempt(action::getAsDouble).orElse(Double.NaN);
    }

    public void add(Diagnostic.Builder diagnostic) {
        diagnostics.add(diagnostic.build());
    }

    public boolean isEmpty() {
        return diagnostics.isEmpty();
    }

    public List<Diagnostic> all() {
        return new ArrayList<>(diagnostics);
    }

    /** Throws all that was gathered, if anything was. */
    public void raise() {
        if (!diagnostics.isEmpty()) {
            throw new Fault(all());
        }
    }
}
