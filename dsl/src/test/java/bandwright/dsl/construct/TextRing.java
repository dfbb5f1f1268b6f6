// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import bandwright.dsl.measure.RingMeasurer;
import bandwright.dsl.parse.RingParser;
import bandwright.dsl.resolve.Definitions;
import bandwright.dsl.resolve.Resolution;
import bandwright.dsl.source.SourceText;

import static org.assertj.core.api.Assertions.assertThat;

/** A ring from its text. */
public final class TextRing {
    private TextRing() {}

    public static Ring of(String text) {
        Workshop workshop = new Workshop();
        SourceText source = new SourceText("test", text);
        var parsed = RingParser.parse(source);
        assertThat(parsed.diagnostics()).isEmpty();
        Definitions.Change change = Definitions.EMPTY.with("test", source, parsed.cell());
        assertThat(change.diagnostics()).isEmpty();
        return workshop.ring(new Resolution(change.definitions(), new RingMeasurer(workshop)));
    }
}
