// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.design;

import java.util.List;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.diagnostic.Severity;

/** What the ring language has to say against something; the message is its own sentence. */
public final class DesignException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<Diagnostic> diagnostics;

    /** @param diagnostics at least one; the first error gives the message */
    public DesignException(List<Diagnostic> diagnostics) {
        super(first(diagnostics).message());
        this.diagnostics = List.copyOf(diagnostics);
    }

    DesignException(String code, String sentence) {
        this(List.of(new Diagnostic(code, Severity.ERROR, sentence, null, List.of(), null, null, null, null)));
    }

    /** The error, or the first of what is told if none of it is an error in itself. */
    private static Diagnostic first(List<Diagnostic> diagnostics) {
        return diagnostics.stream().filter(Diagnostic::isError).findFirst().orElse(diagnostics.get(0));
    }

    /** What kind of trouble it is, as errors of ring text name it: {@code unit-mismatch}. */
    public String code() {
        return first(diagnostics).code();
    }

    /** All that was told, with places in ring text. */
    public List<Diagnostic> diagnostics() {
        return diagnostics;
    }
}
