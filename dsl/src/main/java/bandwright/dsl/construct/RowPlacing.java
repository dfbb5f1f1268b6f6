// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.model.Fault;
import bandwright.dsl.model.StoneRow;

/** Puts a row's lines onto the surface of the part it is set in, and refuses what cannot stand there. */
record RowPlacing(StoneRow row, PartSection part) {
    StoneLayout layout() {
        double width = row.widthMm();
        double metal = part.region().bounds().width();
        if (width > metal) {
            throw new Fault(Diagnostic.error("stone-off-part", row.place())
                    .with(row.name(), row.part(), Lengths.text(width), Lengths.text(metal))
                    .build());
        }
        List<StoneLayout.Line> lines = new ArrayList<>();
        for (double across : row.acrossMm()) {
            lines.add(line(across));
        }
        StoneLayout layout = StoneLayout.lay(row, lines);
        if (layout.perLine() < 1) {
            throw new Fault(Diagnostic.error("too-few-stones", row.place())
                    .with(
                            row.name(),
                            Lengths.text(2 * StrictMath.PI * lines.get(0).girdleRadius()),
                            Lengths.text(row.aroundMm()))
                    .build());
        }
        return layout;
    }

    private StoneLayout.Line line(double across) {
        SurfaceLine surface = surface(across);
        double out = row.upright() ? 1 : surface.outFacing();
        double along = row.upright() ? 0 : surface.acrossFacing();
        double girdle = surface.height() - row.sinkMm() * out;
        double inner = part.band().finger().innerRadiusMm();
        if (girdle <= inner) {
            throw new Fault(Diagnostic.error("sink-too-deep", row.place())
                    .with(row.name(), Lengths.text(row.sinkMm()), Lengths.text(surface.height() - inner))
                    .build());
        }
        double pavilion = SeatShape.pavilionDepth(row.widthMm());
        if (-row.sinkMm() > pavilion) {
            throw new Fault(Diagnostic.error("stones-float", row.place())
                    .with(row.name(), Lengths.text(-row.sinkMm()), Lengths.text(pavilion))
                    .build());
        }
        return new StoneLayout.Line(across - row.sinkMm() * along, girdle, out, along, 0);
    }

    /** The outermost surface of the part itself at a place across. */
    private SurfaceLine surface(double across) {
        return part.region().pieces().stream()
                .map(Region.Piece::outer)
                .map((Outline outline) -> SurfaceLine.outer(outline, across))
                .flatMap(Optional::stream)
                .max(Comparator.comparingDouble(SurfaceLine::height))
                .orElseThrow(() -> new Fault(Diagnostic.error("stone-beside-part", row.place())
                        .with(row.name(), Lengths.text(across), row.part())
                        .build()));
    }
}
