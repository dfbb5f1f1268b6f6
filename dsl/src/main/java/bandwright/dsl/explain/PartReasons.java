// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import bandwright.dsl.construct.PartSection;
import bandwright.dsl.construct.Ring;
import bandwright.dsl.construct.Workshop;
import bandwright.dsl.geometry.operation.ThinnestWall;
import bandwright.dsl.geometry.plane.Moments;
import bandwright.dsl.measure.PartMeasures;
import bandwright.dsl.model.Band;
import bandwright.dsl.model.Design;
import bandwright.dsl.model.Groove;
import bandwright.dsl.quantity.FingerSize;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.QuantityFormat;
import bandwright.dsl.quantity.Unit;

/**
 * Explains what is measured of a part. A weight is told in the order in which the part is made: the band turned whole (by the
 * theorem of Pappus), what grooves take, what seats take, what pins add; each is the difference of two stages.
 */
final class PartReasons {
    /** Less than this is the rest of a calculation. */
    private static final double NOTHING_MM3 = 1e-6;

    private static final String CLOSED =
            "difference of two closed models; see docs/solids.md for the error, below 4 in 100,000";

    private static final String PAPPUS = "theorem of Pappus and Guldin: area times the way of its centroid";

    private final Design design;
    private final Workshop workshop;
    private final String part;
    private final Ring ring;
    private final Function<String, Step> named;
    private final Function<FingerSize, Optional<Step>> sizes;

    PartReasons(
            Design design,
            Workshop workshop,
            String part,
            Function<String, Step> named,
            Function<FingerSize, Optional<Step>> sizes) {
        this.design = design;
        this.workshop = workshop;
        this.part = part;
        this.ring = workshop.ring(design);
        this.named = named;
        this.sizes = sizes;
    }

    String head(String word) {
        PartMeasures measures = new PartMeasures(ring, part);
        String value = switch (word) {
            case "weight" -> Quantity.grams(measures.weightG()).toString();
            case "volume" -> cubic(measures.volumeMm3());
            case "density" -> MetalReason.density(measures.densityGPerCm3());
            case "surface" -> number(measures.surfaceMm2()) + " mm^2";
            case "width" -> Quantity.millimetres(measures.widthMm()).toString();
            case "height" -> Quantity.millimetres(measures.heightMm()).toString();
            default ->
                measures.wall()
                        .map(wall -> Quantity.millimetres(wall.thicknessMm()).toString())
                        .orElse("none");
        };
        return word + "(" + part + ") = " + value;
    }

    List<Step> of(String word) {
        PartMeasures measures = new PartMeasures(ring, part);
        return switch (word) {
            case "weight" ->
                List.of(
                        Step.of(
                                "volume x density = " + cubic(measures.volumeMm3()) + " x "
                                        + MetalReason.density(measures.densityGPerCm3()) + " / 1000 = "
                                        + Quantity.grams(measures.weightG()),
                                "a cubic centimetre holds 1000 mm^3"),
                        volume(),
                        MetalReason.of(ring.section(part).metal()));
            case "volume" -> List.of(volume());
            case "density" -> List.of(MetalReason.of(ring.section(part).metal()));
            case "wall" -> measures.wall().map(PartReasons::wall).stream().toList();
            case "surface" ->
                List.of(Step.of("the triangles of the closed model added up, holes and inner faces too", ""));
            default ->
                List.of(
                        Step.of(
                                "the extent of the part's cross-section "
                                        + (word.equals("width") ? "along" : "away from")
                                        + " the finger; pins are left out",
                                ""),
                        named.apply(band().name()));
        };
    }

    private Band band() {
        return ring.section(part).band();
    }

    private Step volume() {
        double whole = volume(Stage.Reach.PINS);
        double cut = volume(Stage.Reach.SEATS);
        double turned = volume(Stage.Reach.GROOVES);
        List<Step> parts = new ArrayList<>();
        double start;
        if (design.bands().stream().anyMatch(band -> band.name().equals(part))) {
            start = volume(Stage.Reach.BANDS);
            parts.add(band(start));
            if (Math.abs(start - turned) > NOTHING_MM3) {
                parts.add(Step.of("grooves take " + cubic(start - turned) + ": " + grooves(), ""));
            }
        } else {
            start = turned;
            boolean revolves = section(Stage.Reach.GROOVES).isTurned();
            String made = madeBy();
            parts.add(
                    revolves
                            ? Step.of(made + ", turned once: " + turned(Stage.Reach.GROOVES) + cubic(turned), PAPPUS)
                            : Step.of(made + ", cut from its closed model: " + cubic(turned), CLOSED));
        }
        if (Math.abs(turned - cut) > NOTHING_MM3) {
            parts.add(Step.of("seats take " + cubic(turned - cut) + ": " + seats(), CLOSED));
        }
        if (Math.abs(cut - whole) > NOTHING_MM3) {
            parts.add(Step.of("pins add " + cubic(whole - cut) + ": " + pins(), "likewise"));
        }
        return new Step("volume = " + cubic(whole), "", parts);
    }

    private double volume(Stage.Reach reach) {
        return workshop.ring(new Stage(design, reach)).body(part).volumeMm3();
    }

    private Step band(double volume) {
        Band band = band();
        List<Step> parts = new ArrayList<>();
        parts.add(named.apply(band.name()));
        sizes.apply(band.finger().bore()).ifPresent(parts::add);
        String text = band.isEven()
                ? "the band turned once: " + turned(Stage.Reach.BANDS) + cubic(volume)
                : "the band with its changing cross-section, added up round the ring: " + cubic(volume);
        return new Step(text, band.isEven() ? PAPPUS : "", parts);
    }

    /** {@code area x 2 pi x radius =}, where the part is a body of revolution. */
    private String turned(Stage.Reach reach) {
        Moments moments = section(reach).region().moments();
        double radius = moments.aboutX() / moments.area();
        return "area " + number(moments.area()) + " mm^2 x 2 pi x " + number(radius)
                + " mm (its centroid from the finger's axis) = ";
    }

    private PartSection section(Stage.Reach reach) {
        return workshop.ring(new Stage(design, reach)).section(part);
    }

    private String madeBy() {
        return design.grooves().stream()
                .filter(groove -> Stream.concat(
                                groove.leaving().stream(),
                                Stream.concat(groove.keep().map(Groove.Keep::part).stream(), groove.collar().stream()))
                        .anyMatch(part::equals))
                .map(groove -> "what " + groove.name() + " makes of " + String.join(" and ", groove.from()))
                .findFirst()
                .orElseGet(() -> "what a groove makes of " + band().name());
    }

    private String grooves() {
        return design.grooves().stream()
                .filter(groove -> groove.from().contains(part))
                .map(groove -> groove.name()
                        + groove.keep().map(keep -> ", kept as " + keep.part()).orElse("")
                        + groove.collar()
                                .map(name -> ", with " + name + " parted off")
                                .orElse(""))
                .collect(Collectors.joining("; "));
    }

    private String seats() {
        return design.seats().stream()
                .filter(seats -> ring.cuts(seats, part))
                .map(seats -> seats.name() + (seats.channel().isPresent() ? ", a channel" : "") + " for the "
                        + ring.layout(seats.row()).count() + " stones of " + seats.row())
                .collect(Collectors.joining("; "));
    }

    private String pins() {
        return design.prongs().stream()
                .filter(prongs -> prongs.part().equals(part))
                .map(prongs -> prongs.name() + " of " + prongs.row())
                .collect(Collectors.joining("; "));
    }

    private static Step wall(ThinnestWall.Wall wall) {
        return Step.of(
                "the shortest way through the metal between faces that look away from each other: from "
                        + place(wall.fromX(), wall.fromY(), wall.fromZ()) + " to "
                        + place(wall.toX(), wall.toY(), wall.toZ()) + ", from the finger's axis",
                "exact for the faceted model, whose facets leave the round by up to 0.003 mm");
    }

    private static String place(double x, double y, double z) {
        double degrees = StrictMath.atan2(y, x) * 180 / StrictMath.PI;
        return String.format(
                Locale.ROOT,
                "%s deg, %s mm across, %s mm out",
                QuantityFormat.number(degrees < 0 ? degrees + 360 : degrees, 1),
                number(z),
                number(Math.sqrt(x * x + y * y)));
    }

    private static String number(double value) {
        return QuantityFormat.number(value, 3);
    }

    private static String cubic(double mm3) {
        return Quantity.of(mm3, Unit.parse("mm^3").orElseThrow()).toString();
    }
}
