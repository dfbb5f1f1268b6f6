// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.ring;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.check.Finding;
import bandwright.dsl.check.Findings;
import bandwright.dsl.check.RingPlace;
import bandwright.dsl.check.Verdict;
import bandwright.dsl.construct.PartSection;
import bandwright.dsl.construct.Ring;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.material.LinearColour;
import bandwright.dsl.measure.PartMeasures;
import bandwright.dsl.measure.RowMeasures;
import bandwright.dsl.model.Band;
import bandwright.dsl.model.Groove;
import bandwright.dsl.model.Prongs;
import bandwright.dsl.model.Seats;
import bandwright.dsl.model.StoneRow;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.QuantityFormat;
import bandwright.dsl.view.Turntable;
import bandwright.dsl.view.image.Srgb;

/** What there is to say about a ring, or some of its parts, beside the model to turn. */
public final class RingTurntable {
    private final Ring ring;
    private final Set<String> parts;
    private final LetInWays ways;
    private final double width;
    private final double radius;

    private RingTurntable(Ring ring, Set<String> parts) {
        this.ring = ring;
        this.parts = parts;
        Bounds bounds = Bounds.NONE;
        for (PartSection section : ring.sections()) {
            bounds = bounds.with(ring.bounds(section.name()));
        }
        this.width = bounds.width();
        this.radius = bounds.maxY();
        this.ways = new LetInWays(ring, width, radius);
    }

    /**
     * @param parts by name
     * @param findings those that failed or are close are pointed at
     * @param glb the parts' shape, as the export of this format writes it
     */
    public static Turntable of(Ring ring, Set<String> parts, Findings findings, byte[] glb) {
        RingTurntable maker = new RingTurntable(ring, parts);
        List<Turntable.Part> all = maker.parts();
        List<Turntable.Mark> marks = maker.marks(findings);
        String title = ring.design().title().orElse("The ring");
        return new Turntable(
                title, glb, summary(title, all, marks), all, maker.features(), marks, maker.width, maker.radius);
    }

    private List<Turntable.Part> parts() {
        List<Turntable.Part> all = new ArrayList<>();
        for (PartSection section : ring.sections()) {
            if (parts.contains(section.name())) {
                PartMeasures measures = new PartMeasures(ring, section.name());
                String name = section.name();
                all.add(new Turntable.Part(
                        name,
                        false,
                        section.metal().name(),
                        colour(section.metal().picture()),
                        List.of(
                                measure("weight", name, Quantity.grams(measures.weightG())),
                                measure("width", name, Quantity.millimetres(measures.widthMm())),
                                measure("height", name, Quantity.millimetres(measures.heightMm()))),
                        ways.of(name)));
            }
        }
        for (StoneRow row : ring.design().stoneRows()) {
            if (parts.contains(row.part())) {
                all.add(stones(row));
            }
        }
        return all;
    }

    private Turntable.Part stones(StoneRow row) {
        RowMeasures measures = new RowMeasures(ring, row.name());
        List<Turntable.Measure> told = new ArrayList<>();
        told.add(measure("count", row.name(), Quantity.number(measures.count())));
        told.add(new Turntable.Measure(
                "size",
                row.cut().hasTwoSizes()
                        ? length(row.aroundMm()) + " by " + length(row.widthMm())
                        : length(row.widthMm())));
        add(told, "gap", row, measures.gapMm());
        add(told, "pitch", row, measures.pitchMm());
        told.add(measure("carats", row.name(), Quantity.carats(measures.caratsTotal())));
        return new Turntable.Part(
                row.name(),
                true,
                row.cut().word() + " " + row.material().name(),
                colour(row.material().body()),
                told,
                ways.of(row));
    }

    private static void add(List<Turntable.Measure> told, String word, StoneRow row, OptionalDouble value) {
        value.ifPresent(mm -> told.add(measure(word, row.name(), Quantity.millimetres(mm))));
    }

    private static Turntable.Measure measure(String word, String subject, Quantity value) {
        return new Turntable.Measure(word + "(" + subject + ")", QuantityFormat.format(value));
    }

    private static String length(double mm) {
        return QuantityFormat.format(Quantity.millimetres(mm));
    }

    private static String colour(LinearColour colour) {
        return String.format(Locale.ROOT, "#%06x", Srgb.code(colour));
    }

    /** What stands behind the name of a face, as the definition gives it. */
    private Map<String, String> features() {
        Map<String, String> features = new LinkedHashMap<>();
        for (Band band : ring.design().bands()) {
            features.put(
                    band.name(),
                    "band, inside diameter " + length(2 * band.finger().innerRadiusMm()) + ", "
                            + band.finger().size().text());
        }
        for (Groove groove : ring.design().grooves()) {
            features.put(
                    groove.name(),
                    "groove, width " + length(groove.widthMm())
                            + (groove.depthMm().isPresent()
                                    ? ", depth " + length(groove.depthMm().getAsDouble())
                                    : ", through"));
        }
        for (Seats seats : ring.design().seats()) {
            features.put(
                    seats.name(),
                    "seats for " + seats.row() + ", hole " + length(seats.holeMm()) + ", clearance "
                            + length(seats.clearanceMm()));
        }
        for (Prongs prongs : ring.design().prongs()) {
            features.put(
                    prongs.name(),
                    "pins for " + prongs.row() + ", diameter " + length(prongs.diameterMm()) + ", rise "
                            + length(prongs.riseMm()));
        }
        return features;
    }

    private List<Turntable.Mark> marks(Findings findings) {
        List<Turntable.Mark> marks = new ArrayList<>();
        for (Finding finding : findings.all()) {
            if (finding.verdict() == Verdict.FAILED || finding.verdict() == Verdict.CLOSE) {
                marks.add(new Turntable.Mark(
                        finding.verdict().word(),
                        finding.title(),
                        finding.at(),
                        finding.advice().isEmpty() ? finding.sentence() : finding.sentence() + ". " + finding.advice(),
                        at(finding.place())));
            }
        }
        return marks;
    }

    private @Nullable List<Double> at(@Nullable RingPlace place) {
        if (place == null) {
            return null;
        }
        double out = ring.design().bands().get(0).finger().innerRadiusMm() + place.outMm();
        double angle = place.aroundDegrees() * (StrictMath.PI / 180);
        return List.of(out * StrictMath.cos(angle), out * StrictMath.sin(angle), place.acrossMm());
    }

    private static String summary(String title, List<Turntable.Part> parts, List<Turntable.Mark> marks) {
        List<String> told = new ArrayList<>();
        for (Turntable.Part part : parts) {
            Turntable.Measure first = part.measures().get(0);
            told.add(
                    part.stones()
                            ? part.name() + ", " + first.value() + " stones, " + part.material()
                            : part.name() + " in " + part.material() + ", " + first.value());
        }
        long failed = marks.stream()
                .filter(mark -> mark.verdict().equals(Verdict.FAILED.word()))
                .count();
        long close = marks.size() - failed;
        return "Model of " + title + " to turn: " + String.join("; ", told) + ". "
                + (marks.isEmpty()
                        ? "No check failed or is close."
                        : "Checks: " + failed + " failed, " + close + " close.");
    }
}
