// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.model;

import java.util.List;

import bandwright.dsl.diagnostic.Diagnostic;

/** Why something of the design cannot be made, told to the user; travels instead of the thing. */
public final class Fault extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<Diagnostic> diagnostics;

    public Fault(List<Diagnostic> diagnostics) {
        super(diagnostics.isEmpty() ? "" : diagnostics.get(0).code(), null, false, false);
        this.diagnostics = List.copyOf(diagnostics);
    }

    public Fault(Diagnostic diagnostic) {
        this(List.of(diagnostic));
    }

    public List<Diagnostic> diagnostics() {
        return diagnostics;
    }
}
