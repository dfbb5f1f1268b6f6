// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.drawing;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.view.Chart;
import bandwright.dsl.view.image.StrokeText;

/**
 * Lays a chart out as a drawing in true millimetres: the title above, the panels below one another, what sets the lines apart and
 * the notes at the bottom. Over numbers a panel has lines with points, over words it has bars.
 */
public final class ChartDrawing {
    /** Text on paper, mm. */
    static final double TEXT = 3;

    /** Width of a panel, mm. */
    static final double WIDTH = 120;

    static final int INK = 0x222222;
    static final int HELP = 0xd5d5d5;

    private static final double MARGIN = 4;

    private final Chart chart;
    private final List<Mark> marks = new ArrayList<>();

    private ChartDrawing(Chart chart) {
        this.chart = chart;
    }

    public static Drawing of(Chart chart) {
        return new ChartDrawing(chart).layOut();
    }

    private Drawing layOut() {
        List<String> notes = new ArrayList<>(chart.notes());
        label(marks, chart.title(), new Point(0, 3 * TEXT), 1.25 * TEXT, StrokeText.Anchor.START);
        if (chart.across().isNumbers()) {
            LinePanels.draw(chart, marks, notes);
        } else {
            BarPanels.draw(chart, marks, notes);
        }
        double y = bounds().minY() - 1.6 * TEXT;
        for (String note : notes) {
            label(marks, note, new Point(0, y), TEXT, StrokeText.Anchor.START);
            y -= 1.6 * TEXT;
        }
        Bounds all = bounds();
        Bounds box = new Bounds(all.minX() - MARGIN, all.minY() - MARGIN, all.maxX() + MARGIN, all.maxY() + MARGIN);
        return new Drawing(chart.title(), ChartWords.of(chart), box, 1, marks);
    }

    private Bounds bounds() {
        return marks.stream().map(Mark::bounds).reduce(Bounds.NONE, Bounds::with);
    }

    static void label(List<Mark> marks, String text, Point at, double size, StrokeText.Anchor anchor) {
        marks.add(new Mark.Label(text, at, size, anchor, false, INK));
    }

    static void line(List<Mark> marks, Point from, Point to, int colour, double width) {
        marks.add(new Mark.Stroke(List.of(from, to), colour, width, Mark.Dash.NONE));
    }

    /** So many of some things, evenly from the first to the last. */
    static List<Integer> evenly(int count, int most) {
        List<Integer> chosen = new ArrayList<>();
        int kept = Math.min(count, most);
        for (int i = 0; i < kept; i++) {
            chosen.add(kept == 1 ? 0 : (int) Math.round((double) i * (count - 1) / (kept - 1)));
        }
        return chosen;
    }
}
