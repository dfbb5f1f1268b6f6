// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.drawing;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import javax.xml.parsers.DocumentBuilderFactory;

import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.view.GoldenView;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class SectionDrawingTest {
    private static final Drawing DRAWING = SectionDrawing.of(StandInSection.section(), 10);

    @Test
    void the_section_of_a_two_tone_band_looks_as_it_did() {
        GoldenView.check("section-two-tone.svg", SvgWriter.write(DRAWING));
        GoldenView.check("section-two-tone.pixels", DrawingPainter.pixels(DRAWING, 800));
    }

    @Test
    void the_svg_stands_alone() throws Exception {
        String svg = SvgWriter.write(DRAWING);

        Element root = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(svg)))
                .getDocumentElement();

        assertThat(root.getAttribute("role")).isEqualTo("img");
        assertThat(root.getElementsByTagName("title").getLength()).isEqualTo(1);
        assertThat(root.getElementsByTagName("desc").getLength()).isEqualTo(1);
        assertThat(svg).doesNotContain("style", " id=", "url(", "foreignObject", "script", "href", "NaN");
        assertThat(svg.length()).isLessThan(200_000);
    }

    @Test
    void the_paper_is_the_scale_times_the_view_box() throws Exception {
        String svg = SvgWriter.write(DRAWING);
        Element root = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(svg)))
                .getDocumentElement();

        double width = Double.parseDouble(root.getAttribute("width").replace("mm", ""));
        double box = Double.parseDouble(root.getAttribute("viewBox").split(" ", -1)[2]);

        assertThat(width).isCloseTo(10 * box, within(1e-3));
    }

    @Test
    void labels_never_overlap_at_any_scale() {
        for (double scale : new double[] {1, 2, 5, 10, 20, 40}) {
            Labels.assertApart(SectionDrawing.of(StandInSection.section(), scale));
        }
    }

    @Test
    void labels_never_overlap_whatever_is_measured() {
        Random random = new Random(11);
        Section model = StandInSection.section();
        for (int round = 0; round < 200; round++) {
            List<Section.Dimension> dimensions = new ArrayList<>();
            for (int i = 0; i < 9; i++) {
                Section.Direction direction = random.nextBoolean() ? Section.Direction.ACROSS : Section.Direction.OUT;
                Point from = new Point(4.6 * random.nextDouble() - 2.3, 1.9 * random.nextDouble());
                Point to = new Point(4.6 * random.nextDouble() - 2.3, 1.9 * random.nextDouble());
                dimensions.add(new Section.Dimension(direction, from, to, "word ".repeat(1 + random.nextInt(5)) + i));
            }
            Labels.assertApart(SectionDrawing.of(
                    new Section(
                            model.title(),
                            model.description(),
                            model.innerRadiusMm(),
                            model.parts(),
                            model.stones(),
                            model.pins(),
                            dimensions,
                            List.of("a note")),
                    10));
        }
    }

    @Test
    void a_section_through_nothing_is_still_a_drawing() {
        Section nothing = new Section("Empty", "", 9, List.of(), List.of(), List.of(), List.of(), List.of());

        assertThat(SvgWriter.write(SectionDrawing.of(nothing, 10)))
                .contains("finger")
                .doesNotContain("Infinity", "NaN");
    }

    @Test
    void hatching_covers_its_region_once() {
        Region region = StandInSection.section().parts().get(0).region();

        for (double angle : new double[] {0, 0.3, 0.785, 2.4}) {
            double length = Hatching.lines(region, angle, 0.002, 1e-4).stream()
                    .mapToDouble(line -> line.get(0).distanceTo(line.get(1)))
                    .sum();
            assertThat(0.002 * length).isCloseTo(region.moments().area(), within(0.01));
        }
    }

    @Test
    void a_circle_is_drawn_in_two_halves() {
        Point start = new Point(1, 0);
        Region circle = Region.of(new Outline(
                List.of(new bandwright.dsl.geometry.plane.Arc(start, start, new Point(0, 0), 1, 2 * StrictMath.PI))));
        Drawing drawing = new Drawing(
                "circle", "", new Bounds(-1, -1, 1, 1), 1, List.of(new Mark.Shape(circle, 0, Mark.NONE, 0)));

        assertThat(SvgWriter.write(drawing)).contains("d=\"M1 0A1 1 0 0 0 -1 0A1 1 0 0 0 1 0Z\"");
    }

    @Test
    void numbers_have_four_decimals_at_most() {
        assertThat(SvgWriter.number(-0.00001)).isEqualTo("0");
        assertThat(SvgWriter.number(1.23456)).isEqualTo("1.2346");
        assertThat(SvgWriter.number(1200)).isEqualTo("1200");
    }
}
