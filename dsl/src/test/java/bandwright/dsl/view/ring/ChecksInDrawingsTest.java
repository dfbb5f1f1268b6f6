// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.ring;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;

import bandwright.dsl.Answer;
import bandwright.dsl.Outcome;
import bandwright.dsl.Workbench;
import bandwright.dsl.check.Findings;
import bandwright.dsl.construct.PartSection;
import bandwright.dsl.construct.Ring;
import bandwright.dsl.construct.TextRing;
import bandwright.dsl.export.Content;
import bandwright.dsl.export.Plans;
import bandwright.dsl.export.ViewsPlan;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.view.drawing.CheckMark;
import bandwright.dsl.view.drawing.Drawing;
import bandwright.dsl.view.drawing.Labels;
import bandwright.dsl.view.drawing.Layout;
import bandwright.dsl.view.drawing.LayoutDrawing;
import bandwright.dsl.view.drawing.Mark;
import bandwright.dsl.view.drawing.Section;
import bandwright.dsl.view.drawing.SectionDrawing;
import bandwright.dsl.view.image.StrokeText;

import static org.assertj.core.api.Assertions.assertThat;

/** Checks that failed or are close are pointed at in drawings, in words as well, and nothing lies over anything else. */
class ChecksInDrawingsTest {
    private static final String SOUND = """
            profile bar = flat(width: 5 mm, height: 2 mm, edge: 0.3 mm)
            band shank { finger ISO 57  profile bar  metal silver-925 }
            """;

    private static final String THIN = """
            profile bar = flat(width: 5 mm, height: 1.9 mm)
            band shank { finger ISO 57  profile bar  metal white-gold-585-pd }
            cut trough from shank { width 1.9 mm  depth 1.5 mm }
            """;

    private static List<Answer> answers(String text) {
        Outcome outcome = Workbench.empty().run("test", new SourceText("test", text));
        assertThat(outcome.diagnostics()).isEmpty();
        return outcome.answers();
    }

    private static Answer.Drawn drawn(String text) {
        return (Answer.Drawn) answers(text).get(0);
    }

    @Test
    void a_section_points_at_what_failed_near_it() {
        Answer.Drawn section = drawn(THIN + "show section");

        assertThat(section.svg()).contains("Checks pointed at: 1 failed: ").contains("failed: thinnest wall");
        assertThat(section.picture().alternativeText()).contains("1 failed: thinnest wall");
    }

    @Test
    void a_drawing_of_a_sound_ring_says_nothing_of_checks() {
        assertThat(drawn(SOUND + "show section").svg()).doesNotContain("pointed at", "failed", "close:");
    }

    /** Rings whose checks fail in many ways, seeded. */
    @Test
    void labels_never_overlap_on_any_ring() {
        Random random = new Random(20261128);
        for (int i = 0; i < 12; i++) {
            String text = any(random);
            Ring ring = TextRing.of(text);
            Findings findings = Workbench.empty()
                    .run("test", new SourceText("test", text))
                    .workbench()
                    .findings();
            Set<String> parts = ring.sections().stream().map(PartSection::name).collect(Collectors.toSet());
            double degrees = random.nextInt(4) * 4.5;
            List<CheckMark> inSection = RingSection.checks(ring, parts, degrees, findings);
            List<CheckMark> onStrip = RingLayout.checks(ring, "lights", findings);
            assertThat(onStrip).as(text).isNotEmpty();
            for (double scale : new double[] {1, 2, 4, 10}) {
                for (Drawing drawing : List.of(
                        SectionDrawing.of(RingSection.of(ring, parts, degrees), inSection, scale),
                        LayoutDrawing.of(RingLayout.of(ring, "lights"), onStrip, scale))) {
                    Labels.assertApart(drawing);
                    Labels.assertChecksClear(drawing);
                }
            }
        }
    }

    /** Many places, wherever they may lie: more than any ring has. */
    @Test
    void lines_to_crowded_places_do_not_cross() {
        Random random = new Random(20261127);
        Ring ring = TextRing.of(any(random));
        Set<String> parts = ring.sections().stream().map(PartSection::name).collect(Collectors.toSet());
        Section section = RingSection.of(ring, parts, 0);
        Layout layout = RingLayout.of(ring, "lights");
        for (int i = 0; i < 40; i++) {
            List<CheckMark> inSection = new ArrayList<>();
            List<CheckMark> onStrip = new ArrayList<>();
            int many = 2 + random.nextInt(12);
            for (int k = 0; k < many; k++) {
                double across = 4.4 * random.nextDouble() - 2.2;
                inSection.add(new CheckMark(
                        random.nextBoolean(), new Point(across, 1.7 * random.nextDouble()), "place " + k));
                double along = layout.fromMm() + (layout.toMm() - layout.fromMm()) * random.nextInt(24) / 24;
                onStrip.add(new CheckMark(random.nextBoolean(), new Point(along, across), "place " + k));
            }
            for (double scale : new double[] {2, 4, 10}) {
                Labels.assertChecksClear(SectionDrawing.of(section, inSection, scale));
                Labels.assertChecksClear(LayoutDrawing.of(layout, onStrip, scale));
            }
        }
    }

    /** Texts of files in true size, which stand among the lines. */
    @Test
    void texts_of_exported_plans_keep_apart() {
        Random random = new Random(20261129);
        for (int i = 0; i < 24; i++) {
            String text = any(random);
            Ring ring = TextRing.of(text);
            Set<String> parts = ring.sections().stream().map(PartSection::name).collect(Collectors.toSet());
            for (Content.Plan plan : List.of(
                    Plans.of(RingSection.of(ring, parts, random.nextInt(80) * 4.5), ""),
                    Plans.of(RingLayout.of(ring, "lights"), ""),
                    ViewsPlan.of(RingViews.of(ring, Set.of("shank")), ""))) {
                List<Mark.Label> texts = plan.layers().stream()
                        .flatMap(layer -> layer.notes().stream())
                        .map(note -> new Mark.Label(
                                note.text(),
                                note.at().plus(0, -note.heightMm() / 2),
                                note.heightMm() / 0.72,
                                StrokeText.Anchor.MIDDLE,
                                false,
                                0))
                        .toList();
                assertThat(texts).hasSizeGreaterThan(2);
                Bounds all = texts.stream().map(Mark::bounds).reduce(Bounds.NONE, Bounds::with);
                Labels.assertApart(new Drawing(text, "", all, 1, List.copyOf(texts)));
            }
        }
    }

    private static String any(Random random) {
        String form = List.of(
                        "flat(width: 5 mm, height: 1.9 mm)", "d-shape(width: 4.6 mm, height: 1.9 mm, side: 1.2 mm)")
                .get(random.nextInt(2));
        String around = random.nextBoolean()
                ? "full"
                : 60 + random.nextInt(200) + " deg centred " + random.nextInt(90) + " deg";
        return """
                profile bar = %s
                band shank { finger ISO %d  profile bar  metal white-gold-585-pd }
                cut trough from shank {
                  width 1.%d mm
                  depth 1.%d mm
                  keep stripe in red-gold-585
                  let-in from fingertip leaving collar
                }
                stone-row lights on stripe { stone round diamond 1.%d mm  around %s  spacing at least 0.0%d mm  sink 0.2 mm }
                cut seats for lights from stripe, shank { hole 0.8 mm  bearing 0.3 mm  clearance 0.01 mm }
                """.formatted(
                        form,
                        48 + random.nextInt(16),
                        7 + random.nextInt(3),
                        random.nextInt(3),
                        3 + random.nextInt(3),
                        around,
                        5 + random.nextInt(4));
    }
}
