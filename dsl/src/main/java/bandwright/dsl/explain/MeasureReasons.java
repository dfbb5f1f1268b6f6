// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explain;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import bandwright.dsl.construct.Ring;
import bandwright.dsl.construct.Workshop;
import bandwright.dsl.model.Design;
import bandwright.dsl.pattern.AsCast;
import bandwright.dsl.quantity.FingerSize;
import bandwright.dsl.resolve.Kind;
import bandwright.dsl.resolve.Resolution;
import bandwright.dsl.resolve.expression.Value;
import bandwright.dsl.syntax.Expression;
import bandwright.dsl.syntax.Name;
import bandwright.dsl.syntax.Printer;

/** Explains what is measured of parts, rows and the ring. */
final class MeasureReasons {
    private final Resolution resolution;
    private final Workshop workshop;
    private final Function<String, Step> named;
    private final Function<FingerSize, Optional<Step>> sizes;

    MeasureReasons(
            Resolution resolution,
            Workshop workshop,
            Function<String, Step> named,
            Function<FingerSize, Optional<Step>> sizes) {
        this.resolution = resolution;
        this.workshop = workshop;
        this.named = named;
        this.sizes = sizes;
    }

    /** The reason for a measure; nothing if the call is none. */
    Optional<Step> of(Expression.Call call, String word, String subject, Value value) {
        if (!resolution.measureWords().contains(word) || !resolution.isMeasured(subject)) {
            return Optional.empty();
        }
        boolean pattern = call.arguments().size() > 1;
        Design whole = resolution.around(subject);
        Design design = pattern ? AsCast.of(whole) : whole;
        String head = Printer.print(call) + " = ";
        Kind kind = resolution.definitions().kind(subject).orElse(null);
        List<Step> parts;
        if (subject.equals(Name.RING)) {
            parts = ring(word, design);
        } else if (kind == Kind.STONE_ROW) {
            parts = new RowReasons(workshop.ring(design), subject, row(subject)).of(word);
        } else {
            parts = new PartReasons(design, workshop, subject, named, sizes).of(word);
        }
        String text = head + value.text() + (pattern ? ", as cast: what is made at the bench is not cut yet" : "");
        return Optional.of(new Step(text, "", parts));
    }

    private Step row(String row) {
        return named.apply(row);
    }

    /** What is asked of the ring is the sum over its parts, or the smallest or largest of theirs. */
    private List<Step> ring(String word, Design design) {
        Ring ring = workshop.ring(design);
        if (RowReasons.WORDS.contains(word)) {
            return design.stoneRows().stream()
                    .flatMap(row -> new RowReasons(ring, row.name(), row(row.name())).of(word).stream())
                    .toList();
        }
        return ring.sections().stream()
                .map(section -> {
                    PartReasons part = new PartReasons(design, workshop, section.name(), named, sizes);
                    return new Step(part.head(word), "", part.of(word));
                })
                .toList();
    }
}
