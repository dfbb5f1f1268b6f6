// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.model.Fault;
import bandwright.dsl.model.StoneRow;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.QuantityFormat;

/**
 * Puts a row's lines onto the surface of the part it is set in, and refuses what cannot stand there. Where the surface is the same all along
 * the row, all stones of a line stand alike; else {@link ChangingRow} places each at its own angle.
 *
 * @param metal where the part lies
 */
record RowPlacing(StoneRow row, PartSection part, Bounds metal) {
    private static final double SAME = 1e-9;

    /** More is beyond what can be cut in memory. */
    private static final int MOST_STONES = 10_000;

    /** Places at which a surface is compared. */
    private static final int LOOKS = 256;

    /** The slope of a surface round the ring is taken over this much to both sides, radians: a facet in all. */
    private static final double SLOPE_OVER = StrictMath.PI / BodyMaker.FACETS;

    StoneLayout layout() {
        double width = row.widthMm();
        if (width > metal.width()) {
            throw new Fault(Diagnostic.error("stone-off-part", row.place())
                    .with(row.name(), row.part(), Lengths.text(width), Lengths.text(metal.width()))
                    .build());
        }
        List<StoneLayout.Line> lines = new ArrayList<>();
        List<DoubleFunction<StoneLayout.Place>> changing = new ArrayList<>();
        for (double across : row.acrossMm()) {
            Optional<SurfaceLine> even = even(across);
            even.ifPresent(surface -> lines.add(line(across, surface)));
            changing.add(angle -> place(across, angle));
        }
        StoneLayout layout = lines.size() == row.acrossMm().size()
                ? StoneLayout.lay(row, lines)
                : new ChangingRow(row, changing).layout();
        if (layout.perLine() < 1) {
            double radius = lines.isEmpty()
                    ? changing.get(0).apply(middle()).line().girdleRadius()
                    : lines.get(0).girdleRadius();
            throw new Fault(Diagnostic.error("too-few-stones", row.place())
                    .with(row.name(), Lengths.text(2 * StrictMath.PI * radius), Lengths.text(row.aroundMm()))
                    .build());
        }
        if (layout.count() > MOST_STONES) {
            throw new Fault(Diagnostic.error("too-many-stones", row.place())
                    .with(row.name(), Integer.toString(layout.count()), Integer.toString(MOST_STONES))
                    .build());
        }
        return layout;
    }

    /** For each line of the row, the stone that would stand at an angle. */
    List<DoubleFunction<StoneLayout.Place>> lines(StoneLayout layout) {
        List<DoubleFunction<StoneLayout.Place>> lines = new ArrayList<>();
        for (int i = 0; i < layout.lines().size(); i++) {
            StoneLayout.Line line = layout.lines().get(i);
            double across = row.acrossMm().get(i);
            lines.add(layout.even() ? angle -> new StoneLayout.Place(line, angle) : angle -> place(across, angle));
        }
        return lines;
    }

    private double middle() {
        return row.around().centredDegrees() * (StrictMath.PI / 180);
    }

    /** The surface under a line, if it is the same all along the row. */
    private Optional<SurfaceLine> even(double across) {
        if (part.isTurned()) {
            return Optional.of(surface(across, 0).orElseThrow(() -> beside(across)));
        }
        double arm = row.around().degrees() * (StrictMath.PI / 360);
        List<SurfaceLine> found = new ArrayList<>();
        for (int i = 0; i <= LOOKS; i++) {
            surface(across, middle() - arm + 2 * arm * i / LOOKS).ifPresent(found::add);
        }
        if (found.isEmpty()) {
            throw beside(across);
        }
        SurfaceLine first = found.get(0);
        boolean same = found.size() == LOOKS + 1
                && found.stream()
                        .allMatch(other -> Math.abs(other.height() - first.height()) < SAME
                                && Math.abs(other.acrossFacing() - first.acrossFacing()) < SAME);
        return same ? Optional.of(first) : Optional.empty();
    }

    private Fault beside(double across) {
        return new Fault(Diagnostic.error("stone-beside-part", row.place())
                .with(row.name(), Lengths.text(across), row.part())
                .build());
    }

    private StoneLayout.Line line(double across, SurfaceLine surface) {
        double out = row.upright() ? 1 : surface.outFacing();
        double along = row.upright() ? 0 : surface.acrossFacing();
        double girdle = surface.height() - row.sinkMm() * out;
        refuseWrongSink(girdle, surface);
        return new StoneLayout.Line(across - row.sinkMm() * along, girdle, out, along, 0);
    }

    private void refuseWrongSink(double girdle, SurfaceLine surface) {
        double inner = part.band().finger().innerRadiusMm();
        if (girdle <= inner) {
            throw new Fault(Diagnostic.error("sink-too-deep", row.place())
                    .with(row.name(), Lengths.text(row.sinkMm()), Lengths.text(surface.height() - inner))
                    .build());
        }
        double pavilion = SeatShape.pavilionMm(row);
        if (-row.sinkMm() > pavilion) {
            throw new Fault(Diagnostic.error("stones-float", row.place())
                    .with(row.name(), Lengths.text(-row.sinkMm()), Lengths.text(pavilion))
                    .build());
        }
    }

    /**
     * A stone on the surface at an angle. The surface lies at h(θ, x) from the axis; square to it stands (1, −h′/h, −∂h/∂x) out, around and
     * across. The girdle's centre lies below the surface along that.
     */
    private StoneLayout.Place place(double across, double angle) {
        SurfaceLine surface = surface(across, angle).orElseThrow(() -> beyond(angle));
        double rise = row.upright() ? 0 : rise(across, angle, surface.height());
        double size = Math.sqrt(1 + rise * rise * surface.outFacing() * surface.outFacing());
        double out = row.upright() ? 1 : surface.outFacing() / size;
        double along = row.upright() ? 0 : surface.acrossFacing() / size;
        double around = -rise * out;
        double radial = surface.height() - row.sinkMm() * out;
        double sideways = -row.sinkMm() * around;
        refuseWrongSink(radial, surface);
        double turn = StrictMath.atan2(sideways, radial);
        double cos = StrictMath.cos(turn);
        double sin = StrictMath.sin(turn);
        double leaning = around * cos - out * sin;
        return new StoneLayout.Place(
                new StoneLayout.Line(
                        across - row.sinkMm() * along,
                        Math.sqrt(radial * radial + sideways * sideways),
                        out * cos + around * sin,
                        along,
                        0),
                angle + turn,
                Math.abs(leaning) < SAME ? 0 : leaning);
    }

    /** How steeply the surface rises round the ring; 0 at a step, which is no slope. */
    private double rise(double across, double angle, double height) {
        Optional<SurfaceLine> before = surface(across, angle - SLOPE_OVER);
        Optional<SurfaceLine> after = surface(across, angle + SLOPE_OVER);
        if (before.isEmpty() || after.isEmpty()) {
            return 0;
        }
        double rise = (after.get().height() - before.get().height()) / (2 * SLOPE_OVER * height);
        return Math.abs(rise) > 1 ? 0 : rise;
    }

    private Fault beyond(double angle) {
        double degrees = angle * (180 / StrictMath.PI);
        double wrapped = degrees - 360 * Math.floor(degrees / 360);
        return new Fault(Diagnostic.error("stone-beyond-part", row.place())
                .with(row.name(), row.part(), QuantityFormat.format(Quantity.degrees(Math.rint(wrapped))))
                .build());
    }

    /** The outermost surface of the part itself at a place. */
    private Optional<SurfaceLine> surface(double across, double angle) {
        if (across < metal.minX() || across > metal.maxX()) {
            // Of a band that fell into pieces, another one's.
            return Optional.empty();
        }
        return part.carved()
                .map(solid -> Reach.of(solid, angle, across))
                .orElseGet(() -> Reach.of(part.region(), across))
                .map(Reach::high);
    }
}
