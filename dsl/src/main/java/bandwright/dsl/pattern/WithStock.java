// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.pattern;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

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
        double stock = groove.inside() ? insideMm : outsideMm;
        return new Groove(
                groove.name(),
                groove.place(),
                groove.from(),
                groove.acrossMm(),
                groove.widthMm(),
                groove.floor(),
                groove.depthMm().isPresent()
                        ? OptionalDouble.of(groove.depthMm().getAsDouble() + stock)
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
                row.girdleShare());
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
