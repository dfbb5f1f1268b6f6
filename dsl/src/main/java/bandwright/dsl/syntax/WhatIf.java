// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import java.util.List;

import bandwright.dsl.source.Span;

/** Compares the design with one in which some definitions differ. */
public record WhatIf(List<Change> changes, Asked asked, Span span) implements Statement {
    public WhatIf {
        changes = List.copyOf(changes);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.whatIf(this);
    }
}
