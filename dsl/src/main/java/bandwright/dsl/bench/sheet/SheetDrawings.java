// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.bench.sheet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleFunction;

import bandwright.dsl.bench.Sentences;
import bandwright.dsl.check.Findings;
import bandwright.dsl.construct.PartSection;
import bandwright.dsl.construct.Ring;
import bandwright.dsl.construct.StoneLayout;
import bandwright.dsl.export.pdf.PageItem;
import bandwright.dsl.export.pdf.Paper;
import bandwright.dsl.model.StoneRow;
import bandwright.dsl.view.drawing.CheckMark;
import bandwright.dsl.view.drawing.Drawing;
import bandwright.dsl.view.drawing.Layout;
import bandwright.dsl.view.drawing.LayoutDrawing;
import bandwright.dsl.view.drawing.Section;
import bandwright.dsl.view.drawing.SectionDrawing;
import bandwright.dsl.view.drawing.Views;
import bandwright.dsl.view.drawing.ViewsDrawing;
import bandwright.dsl.view.ring.RingLayout;
import bandwright.dsl.view.ring.RingSection;
import bandwright.dsl.view.ring.RingViews;

/** The drawings of a sheet: sections through a stone and beside it, and the strip of each row, magnified and in true size. */
final class SheetDrawings {
    /** Scales that a rule can read, the largest first. */
    private static final double[] SCALES = {10, 8, 5, 4, 3, 2, 1};

    private static final int MOST_SECTIONS = 5;

    /** The tallest a drawing may be, so that one fits below a heading, mm. */
    private static final double TALLEST = 200;

    /** What stands on the first page above the views, with its margins, mm. */
    private static final double ABOVE_VIEWS = 185;

    private final Ring ring;
    private final Findings findings;
    private final Paper paper;
    private final Set<String> parts = new LinkedHashSet<>();

    SheetDrawings(Ring ring, Findings findings, Paper paper) {
        this.ring = ring;
        this.findings = findings;
        this.paper = paper;
        ring.sections().stream().map(PartSection::name).forEach(parts::add);
    }

    /** Front, side and plan, so large that they go on the first page, below the pictures. */
    PageItem views() {
        Views views = RingViews.of(ring, parts);
        return new PageItem.Plan(fitted(scale -> ViewsDrawing.of(views, scale), paper.heightMm() - ABOVE_VIEWS));
    }

    /** At the top of the ring and, where a row has seats all alike, half a step further on, between two stones. */
    List<PageItem> sections() {
        Set<Double> angles = new LinkedHashSet<>(List.of(0.0));
        for (StoneRow row : ring.design().stoneRows()) {
            StoneLayout layout = ring.layout(row.name());
            double step = layout.stepRadians();
            if (layout.places().isEmpty()) {
                continue;
            }
            double first = layout.places().get(0).angle();
            double nearest = layout.places().size() < 2 ? first : first + step * Math.round(-first / step);
            angles.add(degrees(nearest));
            if (layout.places().size() > 1) {
                angles.add(degrees(nearest + step / 2));
            }
        }
        List<PageItem> items = new ArrayList<>();
        for (double angle : angles.stream().limit(MOST_SECTIONS).toList()) {
            Section section = RingSection.of(ring, parts, angle);
            List<CheckMark> checks = RingSection.checks(ring, parts, angle, findings);
            items.add(new PageItem.Plan(fitted(scale -> SectionDrawing.of(section, checks, scale))));
        }
        return items;
    }

    private static double degrees(double radians) {
        return Math.round(radians * (180 / StrictMath.PI) * 1e6) / 1e6;
    }

    List<PageItem> layouts() {
        List<PageItem> items = new ArrayList<>();
        for (StoneRow row : ring.design().stoneRows()) {
            Layout layout = RingLayout.of(ring, row.name());
            List<CheckMark> checks = RingLayout.checks(ring, row.name(), findings);
            Drawing large = fitted(scale -> LayoutDrawing.of(layout, checks, Math.min(scale, 4)));
            items.add(new PageItem.Plan(large));
            if (large.scale() > 1) {
                items.add(new PageItem.Paragraph(Sentences.of("sheet.true-size", row.name())));
                items.add(new PageItem.Plan(LayoutDrawing.of(layout, 1)));
            }
        }
        return items;
    }

    private Drawing fitted(DoubleFunction<Drawing> drawn) {
        return fitted(drawn, TALLEST);
    }

    /** The largest that fits on the paper. */
    private Drawing fitted(DoubleFunction<Drawing> drawn, double tallest) {
        for (double scale : SCALES) {
            Drawing drawing = drawn.apply(scale);
            if (drawing.box().width() * drawing.scale() <= paper.usableWidthMm()
                    && drawing.box().height() * drawing.scale() <= tallest) {
                return drawing;
            }
        }
        return drawn.apply(1);
    }
}
