// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.StringJoiner;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.diagnostic.NearNames;
import bandwright.dsl.material.MeleeTable;
import bandwright.dsl.material.StoneAngles;
import bandwright.dsl.material.StoneCut;
import bandwright.dsl.material.StoneMaterial;
import bandwright.dsl.material.StoneSize;
import bandwright.dsl.material.StoneWeight;
import bandwright.dsl.model.Arc;
import bandwright.dsl.model.Fault;
import bandwright.dsl.model.StoneRow;
import bandwright.dsl.quantity.Dimension;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.Unit;
import bandwright.dsl.resolve.expression.Value;
import bandwright.dsl.syntax.Block;
import bandwright.dsl.syntax.Expression;
import bandwright.dsl.syntax.Name;
import bandwright.dsl.syntax.Property;
import bandwright.dsl.syntax.StoneRowProperty;

/** Stones in a row. */
final class StoneRowReader extends Reader {
    /** What cuts are called besides. */
    private static final Map<String, String> OTHER_CUTS = Map.of(
            "brilliant", "round", "circle", "round", "square", "princess", "step", "baguette", "ellipse", "oval");

    /** Thickness of a girdle where nothing is said, as a share of the stone's size. */
    private static final double GIRDLE = 0.03;

    /** Stones are some 45 to 85 % as deep as they are wide (from memory); what lies far beyond is a slip. */
    private static final double SHALLOWEST = 0.3;

    private static final double DEEPEST = 1.3;

    /** Of the width, below the girdle. */
    private static final double LEAST_PAVILION = 0.1;

    /** The smallest stones cut are about 0.5 mm (common practice, no source); less than this is a slip. */
    private static final double SMALLEST_MM = 0.2;

    private static final int MOST_LINES = 300;

    private static final String EXAMPLE = "stone round diamond 1.5 mm";

    private final bandwright.dsl.syntax.StoneRow row;
    private final Block<StoneRowProperty> block;

    StoneRowReader(Resolution design, Entry entry) {
        super(design, entry);
        this.row = (bandwright.dsl.syntax.StoneRow) entry.statement();
        this.block = row.block();
    }

    StoneRow row() {
        faults.attempt(() -> names.part(row.part(), source));
        Optional<Stone> stone = stone();
        Arc around = around(block.find(Property.Around.class));
        StoneRow.Spacing spacing = spacing();
        double sink = otherwise(block, Property.Word.SINK, Sign.ANY, 0);
        List<Double> across = across();
        double girdle = girdle();
        OptionalDouble depth = stone.isPresent() ? depth(stone.get(), girdle) : OptionalDouble.empty();
        faults.raise();
        Stone known = stone.orElseThrow();
        return new StoneRow(
                name(),
                entry.place(),
                row.part().text(),
                known.cut(),
                known.material(),
                known.size(),
                known.longAcross(),
                known.tolerance(),
                around,
                spacing,
                sink,
                across,
                block.find(StoneRowProperty.Staggered.class) != null,
                block.find(StoneRowProperty.Upright.class) != null,
                girdle,
                depth);
    }

    private record Stone(StoneCut cut, StoneMaterial material, StoneSize size, boolean longAcross, double tolerance) {}

    private Optional<Stone> stone() {
        StoneRowProperty.Stone stone = block.find(StoneRowProperty.Stone.class);
        if (stone == null) {
            missing("stone", EXAMPLE);
            return Optional.empty();
        }
        Optional<StoneCut> cut = cut(stone.cut());
        Optional<StoneMaterial> material = faults.attempt(() -> names.stone(stone.material(), source));
        double size = cut.isPresent() && material.isPresent()
                ? sizeOf(cut.get(), material.get(), stone.size())
                : length("stone", stone.size(), Sign.POSITIVE);
        Expression by = stone.by();
        double other = by == null ? size : length("stone", by, Sign.POSITIVE);
        cut.ifPresent(known -> checkSizes(known, stone));
        if (Math.min(size, other) > 0 && Math.min(size, other) < SMALLEST_MM) {
            faults.add(Diagnostic.error("stone-too-small", place(stone))
                    .with(millimetres(Math.min(size, other)), millimetres(SMALLEST_MM)));
        }
        Expression within = stone.within();
        double tolerance = within == null ? 0 : length("within", within, Sign.NOT_NEGATIVE);
        if (tolerance >= Math.min(size, other)) {
            faults.add(Diagnostic.error("tolerance-too-large", place(stone))
                    .with(millimetres(tolerance), millimetres(Math.min(size, other))));
        }
        return size > 0 && other > 0 && cut.isPresent() && material.isPresent()
                ? Optional.of(new Stone(cut.get(), material.get(), new StoneSize(size, other), other > size, tolerance))
                : Optional.empty();
    }

    /** A stone told by its weight gets the size that the formula of weights gives; for cuts with one size. */
    private double sizeOf(StoneCut cut, StoneMaterial material, Expression size) {
        boolean weighed = size instanceof Expression.NumberLiteral number
                && number.unit() != null
                && number.unit().dimension().equals(Dimension.MASS);
        if (!weighed || (cut.hasTwoSizes() && cut != StoneCut.PRINCESS)) {
            return length("stone", size, Sign.POSITIVE);
        }
        return faults.number(() -> {
            Value value = design.evaluate(size, source);
            double carats = ((Value.Amount) value).quantity().count(Unit.CARAT);
            // A weight grows with the cube of the size.
            double millimetre = StoneWeight.carats(cut, material, StoneSize.of(1));
            double diameter = Math.rint(100 * StrictMath.cbrt(carats / millimetre)) / 100;
            throw new Fault(Diagnostic.error("stone-by-weight", place(size))
                    .with(
                            value.text(),
                            cut.word(),
                            material.name(),
                            millimetres(diameter),
                            StoneWeight.formula(cut),
                            tabled(cut, material, carats))
                    .suggest(place(size), millimetres(diameter))
                    .build());
        });
    }

    /** What trade tables of small diamonds say instead, ready to stand between two sentences. */
    private static String tabled(StoneCut cut, StoneMaterial material, double carats) {
        if (cut != StoneCut.ROUND || !material.name().equals("diamond")) {
            return "";
        }
        StringJoiner tables = new StringJoiner(", ", " Tables of the trade say otherwise: ", ".").setEmptyValue("");
        for (MeleeTable table : MeleeTable.all()) {
            table.diameterMm(carats)
                    .ifPresent(diameter -> tables.add(
                            millimetres(diameter) + " (" + table.source().text() + ")"));
        }
        return tables.toString();
    }

    private Optional<StoneCut> cut(Name word) {
        Optional<StoneCut> cut = StoneCut.find(word.text());
        if (cut.isEmpty()) {
            List<String> words =
                    List.of(StoneCut.values()).stream().map(StoneCut::word).toList();
            String other = OTHER_CUTS.get(word.text());
            List<String> near = other == null ? NearNames.nearest(word.text(), words) : List.of(other);
            Diagnostic.Builder fault =
                    Diagnostic.error("unknown-cut", place(word)).with(word.text());
            if (near.isEmpty()) {
                fault.expected(String.join(", ", words));
            } else {
                fault.suggest(place(word), near.get(0));
            }
            faults.add(fault);
        }
        return cut;
    }

    private void checkSizes(StoneCut cut, StoneRowProperty.Stone stone) {
        Expression by = stone.by();
        if (by != null && !cut.hasTwoSizes()) {
            faults.add(Diagnostic.error("one-size", place(by)).with(cut.word()));
        } else if (by == null && (cut == StoneCut.BAGUETTE || cut == StoneCut.OVAL)) {
            faults.add(Diagnostic.error("two-sizes", place(stone.size()))
                    .with(cut.word())
                    .suggestLine("stone " + cut.word() + " " + stone.material() + " 2.5 mm by 1.5 mm"));
        }
    }

    private StoneRow.Spacing spacing() {
        StoneRowProperty.Spacing spacing = block.find(StoneRowProperty.Spacing.class);
        Property.Amount count = block.amount(Property.Word.COUNT);
        if (spacing != null && count != null) {
            oneOnly(spacing, count);
        } else if (count != null) {
            return new StoneRow.Count(whole(count));
        } else if (spacing == null) {
            missing("spacing or count", "spacing at least 0.15 mm");
            return new StoneRow.Count(0);
        }
        double gap = spacing == null ? 0 : length("spacing", spacing.amount(), Sign.NOT_NEGATIVE);
        return spacing != null && spacing.atLeast() ? new StoneRow.AtLeast(gap) : new StoneRow.Exactly(gap);
    }

    private List<Double> across() {
        StoneRowProperty.Across across = block.find(StoneRowProperty.Across.class);
        if (across == null) {
            return List.of(0.0);
        }
        List<Double> offsets = new ArrayList<>();
        if (across.offsets().size() > MOST_LINES) {
            faults.add(Diagnostic.error("too-many-lines", place(across.offsets().get(MOST_LINES)))
                    .with(Integer.toString(across.offsets().size()), Integer.toString(MOST_LINES)));
            return List.of(0.0);
        }
        across.offsets().forEach(offset -> offsets.add(length("across", offset, Sign.ANY)));
        return offsets;
    }

    /** How deep stones are from table to culet: a length, or a share of their width. */
    private OptionalDouble depth(Stone stone, double girdle) {
        Property.Amount depth = block.amount(Property.Word.DEPTH);
        if (depth == null) {
            return OptionalDouble.empty();
        }
        Value value =
                faults.attempt(() -> design.evaluate(depth.value(), source)).orElse(null);
        boolean length = value instanceof Value.Amount amount
                && amount.quantity().dimension().equals(Dimension.LENGTH);
        double share = length
                ? length("depth", depth.value(), Sign.POSITIVE) / stone.size().widthMm()
                : amount("depth", depth.value(), Dimension.NUMBER, Sign.NOT_NEGATIVE);
        StoneAngles usual = StoneAngles.of(stone.cut());
        // Crown and girdle stay, and below them something must be left.
        double least = Math.max(
                SHALLOWEST, stone.cut().depthShare() - usual.pavilionShare() + girdle - GIRDLE + LEAST_PAVILION);
        if (Double.isFinite(share) && (share < least || share > DEEPEST)) {
            faults.add(Diagnostic.error("stone-depth", place(depth.value()))
                    .with(percent(share), percent(least), percent(DEEPEST)));
        }
        return OptionalDouble.of(share);
    }

    private static String percent(double share) {
        return Quantity.of(Math.rint(share * 1000) / 10, Unit.PERCENT)
                .in(Unit.PERCENT)
                .toString();
    }

    private double girdle() {
        Property.Amount girdle = block.amount(Property.Word.GIRDLE);
        if (girdle == null) {
            return GIRDLE;
        }
        double share = amount("girdle", girdle.value(), Dimension.NUMBER, Sign.NOT_NEGATIVE);
        if (share >= 0.5) {
            faults.add(Diagnostic.error("girdle-too-thick", place(girdle.value()))
                    .with(Quantity.of(share * 100, Unit.PERCENT)
                            .in(Unit.PERCENT)
                            .toString()));
        }
        return share;
    }
}
