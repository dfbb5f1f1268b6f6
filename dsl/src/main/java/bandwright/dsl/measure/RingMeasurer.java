// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.measure;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

import bandwright.dsl.construct.Body;
import bandwright.dsl.construct.Ring;
import bandwright.dsl.construct.Workshop;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.model.Design;
import bandwright.dsl.model.Fault;
import bandwright.dsl.pattern.AsCast;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.Unit;
import bandwright.dsl.resolve.expression.Measurer;
import bandwright.dsl.resolve.expression.Value;

/** Answers the language's measures: {@code weight(shank)}, {@code gap(lights)}. */
public final class RingMeasurer implements Measurer {
    private static final String RING = "ring";
    private static final String PATTERN = "pattern";
    private static final List<String> OF_PARTS =
            List.of("weight", "volume", "surface", "density", "wall", "width", "height");
    private static final List<String> OF_ROWS = List.of("count", "gap", "pitch", "carats", "depth-left");

    private final Workshop workshop;

    public RingMeasurer(Workshop workshop) {
        this.workshop = workshop;
    }

    @Override
    public boolean knows(String word) {
        return OF_PARTS.contains(word) || OF_ROWS.contains(word);
    }

    @Override
    public List<String> words() {
        return Stream.concat(OF_PARTS.stream(), OF_ROWS.stream()).sorted().toList();
    }

    @Override
    public Value measure(String word, String subject, List<String> modifiers, Design design) {
        for (String modifier : modifiers) {
            if (!modifier.equals(PATTERN)) {
                throw new Fault(
                        Diagnostic.error("unknown-stage", null).with(modifier).build());
            }
        }
        Design stage = modifiers.contains(PATTERN) ? AsCast.of(design) : design;
        Ring ring = workshop.ring(stage);
        if (!subject.equals(RING)
                && design.parts().contains(subject)
                && !stage.parts().contains(subject)) {
            throw new Fault(
                    Diagnostic.error("not-in-pattern", null).with(subject).build());
        }
        boolean isRow = stage.stoneRows().stream().anyMatch(row -> row.name().equals(subject));
        boolean isPart = subject.equals(RING) || design.parts().contains(subject);
        if (OF_PARTS.contains(word) && isPart) {
            return new Value.Amount(subject.equals(RING) ? ofRing(word, ring) : ofPart(word, ring, subject));
        }
        if (OF_ROWS.contains(word) && (isRow || subject.equals(RING))) {
            return new Value.Amount(isRow ? ofRow(word, ring, subject) : ofAllRows(word, ring));
        }
        throw new Fault(Diagnostic.error("not-measured", null)
                .with(word, subject, OF_PARTS.contains(word) ? "a part" : "a row of stones")
                .build());
    }

    private static Quantity ofPart(String word, Ring ring, String part) {
        PartMeasures measures = new PartMeasures(ring, part);
        return switch (word) {
            case "weight" -> Quantity.grams(measures.weightG());
            case "volume" -> Quantity.of(measures.volumeMm3(), unit("mm^3"));
            case "surface" -> Quantity.of(measures.surfaceMm2(), unit("mm^2"));
            case "density" -> Quantity.of(measures.densityGPerCm3(), unit("g/cm^3"));
            case "wall" -> Quantity.millimetres(wall(measures, part));
            case "width" -> Quantity.millimetres(measures.widthMm());
            case "height" -> Quantity.millimetres(measures.heightMm());
            default -> throw new IllegalArgumentException(word);
        };
    }

    private static double wall(PartMeasures measures, String part) {
        return measures.wall()
                .orElseThrow(() ->
                        new Fault(Diagnostic.error("no-wall", null).with(part).build()))
                .thicknessMm();
    }

    /** Metal of all parts together; the thinnest of their walls; the largest extents. */
    private static Quantity ofRing(String word, Ring ring) {
        // All bodies at once: they are made side by side on all cores.
        List<String> parts = ring.bodies().stream().map(Body::name).toList();
        if (parts.isEmpty()) {
            throw new Fault(Diagnostic.note("no-ring-yet", null).build());
        }
        ToDoubleFunction<String> value = part -> ofPart(word, ring, part).value();
        Quantity kind = ofPart(word, ring, parts.get(0));
        double result = switch (word) {
            case "wall" -> parts.stream().mapToDouble(value).min().orElse(0);
            case "width" -> ring.extent(parts).widthMm();
            case "height" -> ring.extent(parts).heightMm();
            case "density" ->
                ofRing("weight", ring).value() / ofRing("volume", ring).value();
            default -> parts.stream().mapToDouble(value).sum();
        };
        return new Quantity(result, kind.dimension(), kind.shown());
    }

    private static Quantity ofRow(String word, Ring ring, String row) {
        RowMeasures measures = new RowMeasures(ring, row);
        return switch (word) {
            case "count" -> Quantity.number(measures.count());
            case "gap" -> Quantity.millimetres(measures.gapMm().orElseThrow(() -> single(word, row)));
            case "pitch" -> Quantity.millimetres(measures.pitchMm().orElseThrow(() -> single(word, row)));
            case "carats" -> Quantity.carats(measures.caratsTotal());
            case "depth-left" -> Quantity.millimetres(measures.depthLeftMm());
            default -> throw new IllegalArgumentException(word);
        };
    }

    private static Fault single(String word, String row) {
        return new Fault(Diagnostic.error("single-stone", null).with(row, word).build());
    }

    /** Counts and carats add up; of gaps, pitches and depths the smallest tells. */
    private static Quantity ofAllRows(String word, Ring ring) {
        List<Quantity> values = ring.design().stoneRows().stream()
                .map(row -> ofRow(word, ring, row.name()))
                .toList();
        if (values.isEmpty()) {
            throw new Fault(Diagnostic.error("no-rows", null).with(word).build());
        }
        boolean sum = word.equals("count") || word.equals("carats");
        return values.stream()
                .reduce((a, b) -> sum ? a.plus(b) : a.compare(b) <= 0 ? a : b)
                .orElseThrow();
    }

    private static Unit unit(String text) {
        return Unit.parse(text).orElseThrow();
    }
}
