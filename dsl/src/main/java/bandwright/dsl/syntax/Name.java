// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import java.text.Normalizer;

import bandwright.dsl.source.Span;

/** A name as written, in Unicode NFC. The word {@code ring}, all parts together, is read as a name too. */
public record Name(String text, Span span) implements Node {
    public static final String RING = "ring";

    public Name {
        text = Normalizer.normalize(text, Normalizer.Form.NFC);
    }

    public boolean isRing() {
        return text.equals(RING);
    }

    @Override
    public String toString() {
        return text;
    }
}
