// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.pattern;

import org.junit.jupiter.api.Test;

import bandwright.dsl.construct.Ring;
import bandwright.dsl.construct.SurfaceLine;
import bandwright.dsl.construct.TextRing;
import bandwright.dsl.construct.Workshop;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshMeasures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class PatternTest {
    private static final String FLAT = """
            profile bar = flat(width: 4 mm, height: 1.8 mm)
            band shank { finger DE 18  profile bar  metal silver-925 }
            """;

    private static final String SET = FLAT + """
            cut trough from shank {
              width 1.6 mm
              depth 0.9 mm
              keep stripe in red-gold-585
              let-in from fingertip leaving collar
            }
            stone-row lights on stripe { stone round diamond 1.3 mm  around full  count 44  sink 0.2 mm }
            cut seats for lights from stripe, shank { hole 0.7 mm  bearing 0.3 mm  clearance 0.01 mm }
            prongs pins for lights on stripe { diameter 0.5 mm  rise 0.25 mm  root 0.5 mm  across 0.4 mm }
            """;

    private static final Allowances STOCK = new Allowances(0, 0, 0, 0.1, 0.05);

    @Test
    void a_flat_band_with_stock_is_a_larger_flat_band() {
        Ring stocked = stocked(TextRing.of(FLAT));

        // A ring less a ring: outside 18/2 + 1.8 + 0.1, inside 18/2 - 0.05, width 4 + 2 x 0.1.
        double expected = StrictMath.PI * (10.9 * 10.9 - 8.95 * 8.95) * 4.2;
        assertThat(stocked.body("shank").volumeMm3()).isCloseTo(expected, within(1e-6));
    }

    @Test
    void stock_moves_no_stone_and_no_floor() {
        Ring finished = TextRing.of(SET);
        Ring stocked = stocked(finished);

        assertThat(stocked.layout("lights").count())
                .isEqualTo(finished.layout("lights").count());
        assertThat(stocked.layout("lights").places().get(7).centre())
                .containsExactly(finished.layout("lights").places().get(7).centre(), within(1e-9));
        // The stripe's floor is where it was, its crown is higher by the stock.
        assertThat(stocked.bounds("stripe").minY())
                .isCloseTo(finished.bounds("stripe").minY(), within(1e-9));
        assertThat(stocked.bounds("stripe").maxY())
                .isCloseTo(finished.bounds("stripe").maxY() + 0.1, within(1e-9));
        stocked.bodies()
                .forEach(body -> assertThat(body.isClosed()).as(body.name()).isTrue());
    }

    @Test
    void a_groove_on_a_slope_keeps_its_floor_under_stock() {
        Ring finished = TextRing.of("""
                profile dome = d-shape(width: 5 mm, height: 2 mm, side: 0.8 mm)
                band shank { finger DE 18  profile dome  metal silver-925 }
                cut furrow from shank { width 0.6 mm  depth 0.7 mm  across 1.4 mm }
                """);
        Ring stocked = stocked(finished);

        assertThat(height(stocked, 1.4)).isCloseTo(height(finished, 1.4), within(1e-9));
    }

    @Test
    void a_groove_open_to_the_side_leaves_no_fin_of_stock() {
        Ring stocked = stocked(TextRing.of(FLAT + "cut edge from shank { width 1 mm  depth 0.8 mm  across 1.5 mm }"));

        // The larger band less a groove that now is 0.1 mm wider and deeper.
        double band = StrictMath.PI * (10.9 * 10.9 - 8.95 * 8.95) * 4.2;
        double groove = StrictMath.PI * (10.9 * 10.9 - 10 * 10) * 1.1;
        assertThat(stocked.body("shank").volumeMm3()).isCloseTo(band - groove, within(1e-6));
    }

    private static double height(Ring ring, double across) {
        Outline outline = ring.section("shank").region().pieces().get(0).outer();
        return SurfaceLine.outer(outline, across).orElseThrow().height();
    }

    @Test
    void stock_leaves_a_design_without_any_alone() {
        Ring finished = TextRing.of(SET);

        assertThat(WithStock.of(finished.design(), Allowances.NONE)).isSameAs(finished.design());
    }

    @Test
    void a_pattern_that_shrinks_evenly_is_the_piece_in_a_larger_scale() {
        Mesh casting = TextRing.of(SET).body("stripe").mesh();
        Shrinkage shrinkage = new Shrinkage(new Allowances(0.016, 0.016, 0.016, 0, 0), 9);

        Mesh pattern = shrinkage.pattern(casting);

        double scale = 1 / (1 - 0.016);
        assertThat(MeshMeasures.volume(pattern))
                .isCloseTo(MeshMeasures.volume(casting) * scale * scale * scale, within(1e-9));
        assertThat(shrinkage.volumeRatio(casting)).isCloseTo(scale * scale * scale, within(1e-12));
        assertThat(MeshMeasures.isClosed(pattern)).isTrue();
    }

    /**
     * T. Teague (JETT Research), Santa Fe Symposium paper, as quoted in Ganoksin Orchid thread 39603: a model of 19.95 mm
     * inside, 4.05 mm wide and 1.93 mm thick gave a casting of 19.63, 4.12 and 1.91 mm: it grew in width, which no shrinkage
     * tells, so the width is left alone here.
     */
    @Test
    void a_pattern_that_shrinks_by_direction_has_the_measured_model_s_sizes() {
        double around = 1 - 19.63 / 19.95;
        double out = 1 - 1.91 / 1.93;
        Mesh casting = TextRing.of("""
                        profile bar = flat(width: 4.12 mm, height: 1.91 mm)
                        band shank { finger DE 19.63  profile bar  metal silver-925 }
                        """).body("shank").mesh();

        Mesh model = new Shrinkage(new Allowances(around, 0, out, 0, 0), 19.63 / 2).pattern(casting);

        double expected = StrictMath.PI * (19.95 + 1.93) * 1.93 * 4.12;
        assertThat(MeshMeasures.volume(model)).isCloseTo(expected, within(1e-4 * expected));
    }

    private static Ring stocked(Ring ring) {
        return new Workshop().ring(WithStock.of(ring.design(), STOCK));
    }
}
