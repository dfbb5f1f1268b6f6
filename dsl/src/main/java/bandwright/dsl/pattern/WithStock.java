// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.pattern;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import bandwright.dsl.construct.SurfaceLine;
import bandwright.dsl.geometry.plane.Arc;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Curve;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.OutlineGrowth;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.material.Metal;
import bandwright.dsl.model.Band;
import bandwright.dsl.model.Design;
import bandwright.dsl.model.Finger;
import bandwright.dsl.model.Groove;
import bandwright.dsl.model.Prongs;
import bandwright.dsl.model.Seats;
import bandwright.dsl.model.Section;
import bandwright.dsl.model.StoneRow;
import bandwright.dsl.quantity.FingerSize;
import bandwright.dsl.quantity.SizeSystem;

/**
 * A design with metal left for filing and polishing: every cross-section grown outwards, the bore smaller by what is left
 * inside. What is cut and set stays where it is: grooves are deeper and stones lie lower by the stock above them.
 */
public final class WithStock implements Design {
    /** A groove whose edge comes as near as this to the band's is open to the side, mm. */
    private static final double OPEN_MM = 1e-6;

    private final Design design;
    private final double outsideMm;
    private final double insideMm;

    private WithStock(Design design, Allowances allowances) {
        this.design = design;
        this.outsideMm = allowances.stockOutsideMm();
        this.insideMm = allowances.stockInsideMm();
    }

    /** The design itself where no metal is left. */
    public static Design of(Design design, Allowances allowances) {
        return allowances.hasStock() ? new WithStock(design, allowances) : design;
    }

    /**
     * Whether a curve of a section belongs to the inner wall: where it faces the finger more than the side, half-way along.
     * An outline runs counter-clockwise, so what faces the finger runs to the fingertip.
     */
    static boolean facesFinger(Curve curve) {
        double dx;
        double dy;
        if (curve instanceof Arc arc) {
            Point middle = arc.middle();
            double turn = Math.signum(arc.sweep());
            dx = -turn * (middle.y() - arc.centre().y());
            dy = turn * (middle.x() - arc.centre().x());
        } else {
            dx = curve.end().x() - curve.start().x();
            dy = curve.end().y() - curve.start().y();
        }
        return dx > Math.abs(dy);
    }

    @Override
    public List<Band> bands() {
        return design.bands().stream().map(this::grown).toList();
    }

    private Band grown(Band band) {
        FingerSize bore = FingerSize.ofCircumference(
                SizeSystem.ISO, band.finger().bore().circumferenceMm() - 2 * StrictMath.PI * insideMm);
        return new Band(
                band.name(),
                band.place(),
                new Finger(band.finger().size(), bore),
                band.stations().stream()
                        .map(station -> new Band.Station(grown(station.section()), station.degrees()))
                        .toList(),
                band.metal());
    }

    private Section grown(Section section) {
        Outline outline = OutlineGrowth.of(section.outline(), curve -> facesFinger(curve) ? insideMm : outsideMm)
                // The finger's wall is where a section's heights begin, and it has come nearer to the axis.
                .translated(0, insideMm);
        Bounds bounds = outline.bounds();
        return new Section(
                section.name(),
                section.place(),
                section.form(),
                outline,
                bounds.maxX() - bounds.minX(),
                bounds.maxY() - bounds.minY());
    }

    @Override
    public List<Groove> grooves() {
        return design.grooves().stream().map(this::deeper).toList();
    }

    private Groove deeper(Groove groove) {
        // A groove that is open to a side goes through what is left there, too: no fin stands before it.
        double low = groove.acrossMm() - groove.widthMm() / 2;
        double high = groove.acrossMm() + groove.widthMm() / 2;
        Bounds band = bandBounds();
        double wider = groove.floor().isPresent() ? 0 : outsideMm;
        double from = low <= band.minX() + OPEN_MM ? low - wider : low;
        double to = high >= band.maxX() - OPEN_MM ? high + wider : high;
        return new Groove(
                groove.name(),
                groove.place(),
                groove.from(),
                (from + to) / 2,
                to - from,
                groove.floor(),
                groove.depthMm().isPresent()
                        ? OptionalDouble.of(groove.depthMm().getAsDouble() + risen(groove, (from + to) / 2))
                        : groove.depthMm(),
                groove.around(),
                groove.roundEnds(),
                groove.inside(),
                groove.atBench(),
                groove.keep(),
                groove.letIn(),
                groove.joint(),
                groove.leaving());
    }

    private Bounds bandBounds() {
        Bounds bounds = Bounds.NONE;
        for (Band band : design.bands()) {
            for (Band.Station station : band.stations()) {
                bounds = bounds.with(station.section().outline().bounds());
            }
        }
        return bounds;
    }

    /**
     * How much further it is to a groove's floor, from where its depth is measured: on a slope the surface has risen by more than
     * the stock. Measured on the first band it can be; where the profiles do not reach, the stock itself.
     */
    private double risen(Groove groove, double across) {
        double stock = groove.inside() ? insideMm : outsideMm;
        for (Band band : design.bands()) {
            Section section = band.stations().get(0).section();
            Optional<Double> before = height(section, groove.acrossMm(), groove.inside());
            Optional<Double> after = height(grown(section), across, groove.inside());
            if (before.isPresent() && after.isPresent()) {
                // The grown outline counts its heights from the smaller bore.
                double rise = after.get() - insideMm - before.get();
                return groove.inside() ? -rise : rise;
            }
        }
        return stock;
    }

    private static Optional<Double> height(Section section, double across, boolean inside) {
        Optional<SurfaceLine> line =
                inside ? SurfaceLine.inner(section.outline(), across) : SurfaceLine.outer(section.outline(), across);
        return line.map(SurfaceLine::height);
    }

    @Override
    public List<StoneRow> stoneRows() {
        return design.stoneRows().stream().map(this::lower).toList();
    }

    private StoneRow lower(StoneRow row) {
        return new StoneRow(
                row.name(),
                row.place(),
                row.part(),
                row.cut(),
                row.material(),
                row.size(),
                row.longAcross(),
                row.toleranceMm(),
                row.around(),
                row.spacing(),
                row.sinkMm() + outsideMm,
                row.acrossMm(),
                row.staggered(),
                row.upright(),
                row.girdleShare(),
                row.depthShare());
    }

    @Override
    public Optional<String> title() {
        return design.title();
    }

    @Override
    public List<Seats> seats() {
        return design.seats();
    }

    @Override
    public List<Prongs> prongs() {
        return design.prongs();
    }

    @Override
    public List<String> parts() {
        return design.parts();
    }

    @Override
    public Metal metal(String part) {
        return design.metal(part);
    }
}
