// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explain;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.construct.Ring;
import bandwright.dsl.construct.StoneLayout;
import bandwright.dsl.material.StoneCut;
import bandwright.dsl.material.StoneWeight;
import bandwright.dsl.measure.RowMeasures;
import bandwright.dsl.model.StoneRow;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.QuantityFormat;

/** Explains what is measured of a row of stones. */
final class RowReasons {
    static final List<String> WORDS = List.of("count", "gap", "pitch", "carats", "depth-left");

    private final StoneLayout layout;
    private final StoneRow row;
    private final RowMeasures measures;
    private final Step definition;
    private final double innerRadius;

    /** @param definition the row's own statement, with its place */
    RowReasons(Ring ring, String name, Step definition) {
        this.layout = ring.layout(name);
        this.row = layout.row();
        this.measures = new RowMeasures(ring, name);
        this.definition = definition;
        this.innerRadius = ring.section(row.part()).band().finger().innerRadiusMm();
    }

    List<Step> of(String word) {
        List<Step> steps = new ArrayList<>(
                switch (word) {
                    case "count" -> count();
                    case "gap" -> gap();
                    case "pitch" -> pitch();
                    case "carats" -> carats();
                    default -> depthLeft();
                });
        steps.add(definition);
        return steps;
    }

    /** Whether a formula tells all: round stones upright in one line on an even surface. */
    private boolean isSimple() {
        return row.cut() == StoneCut.ROUND
                && isOneEvenLine()
                && layout.perLine() > 1
                && layout.lines().get(0).axisAcross() == 0;
    }

    private boolean isOneEvenLine() {
        return layout.even() && layout.lines().size() == 1;
    }

    private double radius() {
        return layout.lines().get(0).girdleRadius();
    }

    private List<Step> gap() {
        if (!isSimple()) {
            return List.of(Step.of("the smallest distance between any two girdles, tilted as they stand", ""));
        }
        double degrees = layout.stepRadians() * 180 / StrictMath.PI;
        return List.of(
                Step.of(
                        "2 x (radius x sin(angle / 2) - size / 2 x cos(angle / 2)) = 2 x (" + mm(radius()) + " x sin("
                                + number(degrees / 2) + " deg) - " + mm(row.aroundMm() / 2) + " x cos("
                                + number(degrees / 2) + " deg))",
                        "two circles whose planes are tilted by the angle between neighbours; by symmetry both come "
                                + "nearest to the plane half-way"),
                girdle(),
                angle(degrees));
    }

    private Step girdle() {
        return Step.of(
                "radius of the girdles = " + mm(radius()) + " from the finger's axis, " + mm(radius() - innerRadius)
                        + " above the finger: the surface there less a sink of " + mm(row.sinkMm())
                        + (layout.lines().get(0).axisOut() == 1 ? "" : " along the stones' axis"),
                "");
    }

    private Step angle(double degrees) {
        return Step.of(
                "angle between neighbours = " + number(degrees) + " deg"
                        + (layout.full() ? " = 360 deg / " + layout.perLine() : ""),
                "");
    }

    private List<Step> pitch() {
        if (!isOneEvenLine()) {
            return List.of(Step.of("the smallest straight distance between the girdle centres of neighbours", ""));
        }
        double degrees = layout.stepRadians() * 180 / StrictMath.PI;
        return List.of(
                Step.of(
                        "2 x radius x sin(angle / 2) = 2 x " + mm(radius()) + " x sin(" + number(degrees / 2)
                                + " deg), straight from girdle centre to girdle centre",
                        ""),
                girdle(),
                angle(degrees));
    }

    private List<Step> count() {
        List<Step> steps = new ArrayList<>();
        int lines = layout.lines().size();
        if (lines > 1) {
            steps.add(Step.of(lines + " lines of " + layout.perLine() + " stones", ""));
        }
        if (row.spacing() instanceof StoneRow.Count) {
            steps.add(Step.of("as given", ""));
        } else if (row.spacing() instanceof StoneRow.AtLeast least && isSimple() && layout.full()) {
            double more = gapOf(layout.perLine() + 1);
            steps.add(Step.of(
                    "as many as fit with gaps of at least " + mm(least.gapMm()) + ": " + layout.perLine() + " leave "
                            + mm(gapOf(layout.perLine())) + ", " + (layout.perLine() + 1) + " would leave " + mm(more),
                    ""));
        } else {
            steps.add(Step.of("as many as fit with the spacing asked for", ""));
        }
        return steps;
    }

    private double gapOf(int count) {
        double half = StrictMath.PI / count;
        return 2 * (radius() * StrictMath.sin(half) - row.aroundMm() / 2 * StrictMath.cos(half));
    }

    private List<Step> carats() {
        return List.of(
                Step.of(
                        measures.count() + " stones x " + Quantity.carats(measures.caratsEach()) + " = "
                                + Quantity.carats(measures.caratsTotal()),
                        ""),
                Step.of(
                        "one stone, estimated: " + StoneWeight.formula(row.cut()) + ", depth "
                                + number(100 * row.depthShare().orElse(row.cut().depthShare()))
                                + " % of the width, times the density of "
                                + row.material().name() + " over diamond's",
                        row.depthShare().isPresent()
                                ? "depth as given"
                                : row.cut().depthSource()),
                Step.of("small stones are sold by sieve and table; weigh the parcel", "common practice, no source"));
    }

    private List<Step> depthLeft() {
        double share = row.angles().pavilionShare();
        double pavilion = row.size().widthMm() * share;
        boolean published = row.cut() == StoneCut.ROUND && row.depthShare().isEmpty();
        double out = isOneEvenLine() ? layout.lines().get(0).axisOut() : 1;
        String tilt = out == 1 ? "" : ", of which x " + number(out) + " points to the finger, as the stones are tilted";
        Step depth = Step.of(
                "less the pavilion along the stone's axis, " + number(100 * share) + " % of the "
                        + (published ? "size" : "width") + " = " + mm(pavilion) + tilt,
                published
                        ? "published reference proportions of the round brilliant"
                        : row.depthShare().isPresent() ? "depth as given" : "common practice, no source");
        return isOneEvenLine()
                ? List.of(girdle(), depth)
                : List.of(Step.of("the girdle nearest to the finger, from the finger, as the stones stand", ""), depth);
    }

    private static String mm(double value) {
        return Quantity.millimetres(value).toString();
    }

    private static String number(double value) {
        return QuantityFormat.number(value, 3);
    }
}
