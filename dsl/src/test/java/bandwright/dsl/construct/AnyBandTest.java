// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;

import org.junit.jupiter.api.Test;

import bandwright.dsl.geometry.operation.HalfPlaneSlice;
import bandwright.dsl.geometry.operation.SelfCrossing;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshMeasures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

/** Bands that change on their way round, and grooves that take part of it. */
class AnyBandTest {
    private static final double INNER = 57 / (2 * Math.PI);
    private static final String EVEN = """
            profile dome = d-shape(width: 4.6 mm, height: 1.9 mm, side: 1.25 mm)
            band shank { finger ISO 57  profile dome  metal silver-925 }
            """;
    private static final String CHANGING = """
            profile dome = d-shape(width: 4.6 mm, height: 2.1 mm, side: 1.3 mm)
            profile slim = half-round(width: 3.4 mm, height: 1.6 mm)
            band shank { finger ISO 57  profile dome at 0 deg, slim at 180 deg  metal silver-925 }
            """;
    private static final String TRENCH =
            "cut trough from shank { width 1.6 mm  depth 0.8 mm  keep stripe in red-gold-585 %s }%n";

    @Test
    void a_rectangle_of_changing_height_holds_the_integral() {
        Ring ring = TextRing.of("""
                profile low = rectangle(width: 4 mm, height: 1.5 mm)
                profile high = rectangle(width: 4 mm, height: 2.5 mm)
                band shank { finger ISO 57  profile high at 0 deg, low at 180 deg  metal silver-925 }
                """);
        // Width 4, height 2 + ½ cos θ: the integral of 4 (inner h + ½ h²), closed form.
        double volume = 4 * 2 * Math.PI * (INNER * 2 + (4 + 0.125) / 2);
        assertThat(ring.body("shank").volumeMm3()).isCloseTo(volume, withinPercentage(0.0005));
        assertThat(MeshMeasures.volume(ring.body("shank").mesh())).isCloseTo(volume, withinPercentage(0.0005));
    }

    @Test
    void a_dome_over_changing_sides_holds_the_integral() {
        Ring ring = TextRing.of("""
                profile low = rectangle(width: 3 mm, height: 1.5 mm)
                profile high = rectangle(width: 5 mm, height: 2.5 mm)
                profile edge = rectangle(width: 3.4 mm, height: 2.2 mm)
                band shank { finger ISO 57  profile high at 20 deg, low at 130 deg, edge at 250 deg  metal silver-925 }
                """);
        double sum = span(110, 5, 2.5, 3, 1.5) + span(120, 3, 1.5, 3.4, 2.2) + span(130, 3.4, 2.2, 5, 2.5);
        assertThat(ring.body("shank").volumeMm3()).isCloseTo(sum, withinPercentage(0.0005));
    }

    /** What a rectangle holds between two stations. */
    private static double span(double degrees, double widthA, double heightA, double widthB, double heightB) {
        return Math.toRadians(degrees)
                * simpson(way -> {
                    double share = (1 - Math.cos(Math.PI * way)) / 2;
                    double height = heightA + share * (heightB - heightA);
                    return (widthA + share * (widthB - widthA)) * (INNER * height + height * height / 2);
                });
    }

    private static double simpson(DoubleUnaryOperator function) {
        int steps = 1000;
        double sum = function.applyAsDouble(0) + function.applyAsDouble(1);
        for (int i = 1; i < steps; i++) {
            sum += (i % 2 == 0 ? 2 : 4) * function.applyAsDouble((double) i / steps);
        }
        return sum / (3 * steps);
    }

    @Test
    void two_equal_stations_make_the_even_band() {
        double even = TextRing.of(EVEN).body("shank").volumeMm3();
        Ring ring = TextRing.of(EVEN.replace("profile  dome ", "profile dome ")
                .replace("profile dome  metal", "profile dome at 10 deg, dome at 70 deg  metal"));
        assertThat(ring.body("shank").section().isTurned()).isFalse();
        assertThat(ring.body("shank").volumeMm3()).isCloseTo(even, withinPercentage(1e-9));
    }

    @Test
    void the_section_at_a_station_is_its_profile_and_the_inner_wall_stays_on_the_finger() {
        Ring ring = TextRing.of(CHANGING);
        Mesh mesh = ring.body("shank").mesh();
        double[] areas = {areaOf(ring, 0), areaOf(ring, 1)};
        assertThat(HalfPlaneSlice.of(mesh, 0).moments().area()).isCloseTo(areas[0], withinPercentage(0.05));
        assertThat(HalfPlaneSlice.of(mesh, Math.PI).moments().area()).isCloseTo(areas[1], withinPercentage(0.05));
        for (int i = 0; i < 100; i++) {
            Outline outline = ring.outline(ring.section("shank").band(), i * 0.0628);
            assertThat(outline.bounds().minY()).isCloseTo(0, within(1e-12));
        }
        assertThat(ring.extent(List.of("shank")).widthMm()).isCloseTo(4.6, within(1e-9));
        assertThat(ring.extent(List.of("shank")).heightMm()).isCloseTo(2.1, within(1e-3));
    }

    private static double areaOf(Ring ring, int station) {
        return ring.section("shank")
                .band()
                .stations()
                .get(station)
                .section()
                .outline()
                .moments()
                .area();
    }

    @Test
    void what_an_arc_takes_and_leaves_is_the_whole() {
        for (String band : List.of(EVEN, CHANGING)) {
            double whole = TextRing.of(band).body("shank").volumeMm3();
            for (String ends : List.of(
                    "",
                    "ends round",
                    "let-in from fingertip leaving collar",
                    "let-in from hand leaving collar ends round")) {
                Ring ring = TextRing.of(band + TRENCH.formatted("around 120 deg centred 33 deg " + ends));
                double sum = ring.bodies().stream().mapToDouble(Body::volumeMm3).sum();
                assertThat(sum).as(ends).isCloseTo(whole, withinPercentage(1e-6));
                ring.bodies().forEach(AnyBandTest::isSound);
            }
        }
    }

    private static void isSound(Body body) {
        assertThat(SelfCrossing.depth(body.mesh())).as(body.name()).isLessThan(1e-6);
        assertThat(MeshMeasures.closednessFault(body.mesh())).as(body.name()).isEmpty();
        assertThat(body.volumeMm3()).as(body.name()).isPositive();
    }

    /** A third of a full stripe, by Pappus. */
    @Test
    void square_ends_take_their_share_of_the_round() {
        double full = TextRing.of(EVEN + TRENCH.formatted("")).body("stripe").volumeMm3();
        double third = TextRing.of(EVEN + TRENCH.formatted("around 120 deg centred 200 deg"))
                .body("stripe")
                .volumeMm3();
        assertThat(third).isCloseTo(full / 3, withinPercentage(0.01));
    }

    /** In a flat band half-rounds lack (1 − π/4) of a square of the groove's width, on the surface; below it a little less. */
    @Test
    void round_ends_lack_the_corners_of_the_square() {
        String flat = EVEN.replace(
                "d-shape(width: 4.6 mm, height: 1.9 mm, side: 1.25 mm)", "rectangle(width: 4.6 mm, height: 1.9 mm)");
        double square = TextRing.of(flat + TRENCH.formatted("around 90 deg"))
                .body("stripe")
                .volumeMm3();
        double round = TextRing.of(flat + TRENCH.formatted("around 90 deg ends round"))
                .body("stripe")
                .volumeMm3();
        double top = INNER + 1.9;
        double floor = top - 0.8;
        double corners = (1 - Math.PI / 4) * 1.6 * 1.6 / top * (top * top - floor * floor) / 2;
        assertThat(square - round).isCloseTo(corners, withinPercentage(0.5));
    }

    @Test
    void a_fit_leaves_a_gap_on_every_side() {
        Ring tight = TextRing.of(EVEN + TRENCH.formatted("around 90 deg"));
        Ring loose = TextRing.of(EVEN + TRENCH.formatted("around 90 deg fit 0.05 mm"));
        assertThat(loose.body("shank").volumeMm3())
                .isCloseTo(tight.body("shank").volumeMm3(), within(1e-9));
        double mean = 0.5 * Math.PI * (INNER + 1.5);
        double expected = tight.body("stripe").volumeMm3() * (1.5 / 1.6) * (1 - 0.1 / mean);
        assertThat(loose.body("stripe").volumeMm3()).isBetween(expected * (1 - 0.05 / 0.7), expected);
        isSound(loose.body("stripe"));
    }

    @Test
    void a_window_goes_through_to_the_finger() {
        Ring ring = TextRing.of(
                EVEN + "cut window from shank { width 2 mm  depth through  around 40 deg centred 90 deg  ends round }");
        isSound(ring.body("shank"));
        assertThat(ring.body("shank").pieces()).isEqualTo(1);
        assertThat(HalfPlaneSlice.of(ring.body("shank").mesh(), Math.PI / 2).pieces())
                .hasSize(2);
        assertThat(HalfPlaneSlice.of(ring.body("shank").mesh(), Math.PI).pieces())
                .hasSize(1);
    }

    @Test
    void a_changing_band_parts_into_rims() {
        Ring ring = TextRing.of(CHANGING + "cut slit from shank { width 0.5 mm  depth through  leaving low, high }");
        double whole = TextRing.of(CHANGING).body("shank").volumeMm3();
        assertThat(ring.body("low").volumeMm3()).isCloseTo(ring.body("high").volumeMm3(), withinPercentage(1e-6));
        assertThat(ring.body("low").volumeMm3()).isLessThan(whole / 2);
        assertThat(ring.body("low").mesh().z(0)).isNegative();
        Ring beside = TextRing.of(CHANGING + """
                cut slit from shank { width 0.5 mm  depth through  leaving low, high }
                stone-row lights on low { stone round diamond 0.8 mm  around full  count 5  across 0.8 mm }
                """);
        assertThatThrownBy(() -> beside.layout("lights")).hasMessage("stone-beside-part");
    }

    @Test
    void stones_follow_the_surface_with_one_gap() {
        Ring ring = TextRing.of(CHANGING + """
                stone-row lights on shank { stone round diamond 1.3 mm  around full  spacing at least 0.2 mm  sink 0.2 mm }
                cut seats for lights from shank { hole 0.7 mm  bearing 0.3 mm  clearance 0.01 mm }
                prongs pins for lights on shank { diameter 0.4 mm  rise 0.25 mm  root 0.4 mm  across 0.4 mm }
                """);
        StoneLayout layout = ring.layout("lights");
        assertThat(layout.even()).isFalse();
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        int n = layout.count();
        for (int i = 0; i < n; i++) {
            StoneLayout.Place place = layout.places().get(i);
            double gap = StoneLayout.gap(layout.row(), place, layout.places().get((i + 1) % n));
            least = Math.min(least, gap);
            most = Math.max(most, gap);
            // On the axis through the girdle the surface lies a sink further out.
            double out = place.line().girdleRadius() + 0.2 * place.line().axisOut();
            double height = ring.outline(ring.section("shank").band(), place.angle())
                    .bounds()
                    .maxY();
            assertThat(out).isCloseTo(INNER + height, within(0.02));
        }
        assertThat(least).isBetween(0.2, 0.25);
        assertThat(most - least).isLessThan(1e-4);
        assertThat(layout.gapMm().orElseThrow()).isCloseTo(least, within(1e-12));
        isSound(ring.body("shank"));
    }

    @Test
    void stones_on_an_arc_leave_the_exact_gap_and_the_rest_at_both_ends() {
        Ring ring = TextRing.of(CHANGING + """
                stone-row lights on shank { stone round diamond 1.3 mm  around 150 deg centred 80 deg  spacing 0.3 mm  sink 0.2 mm }
                """);
        StoneLayout layout = ring.layout("lights");
        List<StoneLayout.Place> places = layout.places();
        for (int i = 0; i + 1 < places.size(); i++) {
            assertThat(StoneLayout.gap(layout.row(), places.get(i), places.get(i + 1)))
                    .isCloseTo(0.3, within(1e-4));
        }
        StoneLayout.Place first = places.get(0);
        StoneLayout.Place last = places.get(places.size() - 1);
        double before = first.angle()
                - Math.toRadians(5)
                - Math.atan(0.65 / first.line().girdleRadius());
        double after = Math.toRadians(155)
                - last.angle()
                - Math.atan(0.65 / last.line().girdleRadius());
        assertThat(before).isPositive().isCloseTo(after, within(5e-3)).isLessThan(0.09);
    }

    @Test
    void staggered_lines_on_a_changing_band_stand_between_each_other() {
        Ring ring = TextRing.of(CHANGING + """
                stone-row lights on shank {
                  stone round diamond 1 mm  around full  count 30  sink 0.2 mm  across -0.6 mm, 0.6 mm  staggered
                }
                cut seats for lights from shank { hole 0.5 mm  bearing 0.2 mm  clearance 0.01 mm }
                prongs pins for lights on shank { diameter 0.4 mm  rise 0.25 mm  root 0.4 mm  per-gap 1 }
                """);
        List<StoneLayout.Place> places = ring.layout("lights").places();
        assertThat(places).hasSize(60);
        for (int i = 0; i < 29; i++) {
            assertThat(places.get(30 + i).angle())
                    .isBetween(places.get(i).angle(), places.get(i + 1).angle());
        }
        isSound(ring.body("shank"));
    }

    @Test
    void stones_in_an_arc_groove_of_an_even_band_stand_as_in_a_full_one() {
        String row = """
                stone-row lights on stripe { stone round diamond 1.2 mm  around 100 deg  spacing at least 0.2 mm  sink 0.2 mm }
                cut seats for lights from stripe, shank { hole 0.6 mm  bearing 0.3 mm  clearance 0.01 mm }
                """;
        Ring full = TextRing.of(EVEN + TRENCH.formatted("") + row);
        Ring arc = TextRing.of(EVEN + TRENCH.formatted("around 120 deg") + row);
        assertThat(arc.layout("lights").count()).isEqualTo(full.layout("lights").count());
        assertThat(arc.layout("lights").gapMm().orElseThrow())
                .isCloseTo(full.layout("lights").gapMm().orElseThrow(), within(1e-12));
        double cut = full.section("stripe").region().moments().volumeAboutX()
                - full.body("stripe").volumeMm3();
        double plain = TextRing.of(EVEN + TRENCH.formatted("around 120 deg"))
                .body("stripe")
                .volumeMm3();
        assertThat(plain - arc.body("stripe").volumeMm3()).isCloseTo(cut, withinPercentage(0.05));
        arc.bodies().forEach(AnyBandTest::isSound);
    }

    /** The groove's width at an angle is known, so is the metal over its floor: integrals of one variable. */
    @Test
    void round_ends_and_their_collar_on_a_changing_band_hold_their_integrals() {
        Ring ring =
                TextRing.of("""
                profile low = rectangle(width: 4 mm, height: 1.5 mm)
                profile high = rectangle(width: 4 mm, height: 2.5 mm)
                band shank { finger ISO 57  profile high at 0 deg, low at 180 deg  metal silver-925 }
                """ + TRENCH.formatted("around 100 deg  ends round  let-in from fingertip leaving collar"));
        double arm = Math.toRadians(50);
        double atEnd = INNER + 2 + 0.5 * Math.cos(arm);
        double foot = arm - 0.8 / atEnd;
        DoubleUnaryOperator over = angle -> 0.8 * (INNER + 2 + 0.5 * Math.cos(angle) - 0.4);
        DoubleUnaryOperator half = angle -> {
            double beyond = Math.max(0, angle - foot) * atEnd;
            return Math.sqrt(Math.max(0, 0.64 - beyond * beyond));
        };
        double stripe = 0;
        double collar = 0;
        int steps = 100_000;
        for (int i = 0; i < steps; i++) {
            double angle = (i + 0.5) * arm / steps;
            stripe += 2 * (arm / steps) * 2 * half.applyAsDouble(angle) * over.applyAsDouble(angle);
            collar += 2 * (arm / steps) * (2 - half.applyAsDouble(angle)) * over.applyAsDouble(angle);
        }
        assertThat(ring.body("stripe").volumeMm3()).isCloseTo(stripe, withinPercentage(0.01));
        // The chord that stands for the tip of the half-round is a hair short of the arc's end.
        assertThat(ring.body("collar").volumeMm3()).isCloseTo(collar, withinPercentage(0.1));
    }

    @Test
    void halves_are_two_bodies_that_weigh_as_one() {
        String row = """
                stone-row lights on stripe { stone round diamond 1.2 mm  around full  spacing at least 0.2 mm  sink 0.2 mm }
                cut seats for lights from stripe, shank { hole 0.6 mm  bearing 0.3 mm  clearance 0.01 mm }
                """;
        for (String more : List.of("", row, "around 200 deg ")) {
            String arc = more.startsWith("around") ? more : "";
            String stones = more.startsWith("around") ? "" : more;
            Ring whole = TextRing.of(EVEN + TRENCH.formatted(arc) + stones);
            Ring halves = TextRing.of(EVEN + TRENCH.formatted(arc + "let-in in halves at 9 deg") + stones);
            Body stripe = halves.body("stripe");
            isSound(stripe);
            assertThat(stripe.pieces()).isEqualTo(2).isEqualTo(halves.pieces("stripe"));
            assertThat(stripe.volumeMm3()).isEqualTo(whole.body("stripe").volumeMm3());
            assertThat(MeshMeasures.volume(stripe.mesh()))
                    .isCloseTo(MeshMeasures.volume(whole.body("stripe").mesh()), withinPercentage(1e-7));
        }
    }

    @Test
    void every_face_names_the_definition_that_made_it() {
        String text = TRENCH.formatted("let-in from fingertip leaving collar") + """
                stone-row lights on stripe { stone round diamond 1.2 mm  around full  count 20  sink 0.2 mm }
                cut seats for lights from stripe, shank { hole 0.6 mm  bearing 0.3 mm  clearance 0.01 mm }
                prongs pins for lights on stripe { diameter 0.4 mm  rise 0.25 mm  root 0.4 mm  across 0.4 mm }
                """;
        for (String band : List.of(EVEN, CHANGING)) {
            Ring ring = TextRing.of(band + text);
            assertThat(makers(ring, "shank")).containsExactlyInAnyOrder("shank", "trough", "seats");
            assertThat(makers(ring, "collar")).contains("shank", "trough");
            assertThat(makers(ring, "stripe")).containsExactlyInAnyOrder("shank", "trough", "seats", "pins");
        }
    }

    private static Set<String> makers(Ring ring, String part) {
        Set<String> makers = new TreeSet<>();
        for (int surface : ring.body(part).mesh().surfaces()) {
            makers.add(ring.surfaces().face(surface).definition());
        }
        return makers;
    }

    /** Floor and surface run alike at 0.8 mm from each other: closed form, 1.6 wide, height 2 + ½ cos θ, a quarter of the round. */
    @Test
    void depth_counts_from_the_surface_at_each_angle() {
        Ring ring = TextRing.of("""
                profile low = rectangle(width: 4 mm, height: 1.5 mm)
                profile high = rectangle(width: 4 mm, height: 2.5 mm)
                band shank { finger ISO 57  profile high at 0 deg, low at 180 deg  metal silver-925 }
                """ + TRENCH.formatted("around 90 deg"));
        double quarter = Math.PI / 2;
        double mean = (INNER + 2 - 0.4) * quarter + 0.5 * 2 * Math.sin(quarter / 2);
        assertThat(ring.body("stripe").volumeMm3()).isCloseTo(1.6 * 0.8 * mean, withinPercentage(0.01));
    }
}
