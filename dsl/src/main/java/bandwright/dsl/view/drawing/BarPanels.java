// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.drawing;

import java.util.List;

import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.view.Chart;
import bandwright.dsl.view.image.StrokeText;

/** Panels with level bars, one below the other, each with its words on the left and its number at the end. */
final class BarPanels {
    private static final int MOST_BARS = 40;
    private static final double PITCH = 5.2;
    private static final double THICKNESS = 3.4;
    private static final double BETWEEN = 10;
    private static final int FILL = 0xa9bfd0;
    private static final int EDGE = 0x1b4f72;

    private final Chart chart;
    private final List<Mark> marks;
    private final List<Integer> shown;

    private BarPanels(Chart chart, List<Mark> marks) {
        this.chart = chart;
        this.marks = marks;
        this.shown = ChartDrawing.evenly(bars(), MOST_BARS);
    }

    /** Draws all panels downwards from the height 0. */
    static void draw(Chart chart, List<Mark> marks, List<String> notes) {
        BarPanels panels = new BarPanels(chart, marks);
        double top = 0;
        for (Chart.Panel panel : chart.panels()) {
            top = panels.draw(panel, top) - BETWEEN;
        }
        Point below = new Point(0, top + BETWEEN - 1.8 * ChartDrawing.TEXT);
        ChartDrawing.label(marks, "by " + chart.across().heading(), below, ChartDrawing.TEXT, StrokeText.Anchor.START);
        if (panels.shown.size() < panels.bars()) {
            notes.add("Drawn are " + panels.shown.size() + " of " + panels.bars() + " bars; the table has all.");
        }
    }

    private int bars() {
        return chart.across().labels().size() * chart.panels().get(0).series().size();
    }

    private double draw(Chart.Panel panel, double top) {
        Point corner = new Point(0, top + 0.8 * ChartDrawing.TEXT);
        ChartDrawing.label(marks, panel.heading(), corner, ChartDrawing.TEXT, StrokeText.Anchor.START);
        double least = 0;
        double most = 0;
        for (int bar : shown) {
            double value = value(panel, bar);
            least = Double.isNaN(value) ? least : Math.min(least, value);
            most = Double.isNaN(value) ? most : Math.max(most, value);
        }
        double length = most - least > 0 ? most - least : 1;
        // Numbers stand at the ends of their bars, so the longest must leave room for its own.
        double scale = (ChartDrawing.WIDTH - 5 * ChartDrawing.TEXT) / length;
        double zero = -least * scale;
        double y = top - PITCH / 2 - 0.5;
        for (int bar : shown) {
            bar(panel, bar, y, zero, scale);
            y -= PITCH;
        }
        double floor = y + PITCH / 2;
        ChartDrawing.line(marks, new Point(zero, top), new Point(zero, floor), ChartDrawing.INK, 0.25);
        return floor;
    }

    private void bar(Chart.Panel panel, int bar, double y, double zero, double scale) {
        double base = y - 0.32 * ChartDrawing.TEXT;
        ChartDrawing.label(marks, name(panel, bar), new Point(-1.5, base), ChartDrawing.TEXT, StrokeText.Anchor.END);
        double value = value(panel, bar);
        if (Double.isNaN(value)) {
            ChartDrawing.label(marks, "none", new Point(zero + 1.2, base), ChartDrawing.TEXT, StrokeText.Anchor.START);
            return;
        }
        double end = zero + value * scale;
        if (Math.abs(end - zero) > 0.01) {
            Outline outline =
                    Outline.rectangle(Math.min(zero, end), y - THICKNESS / 2, Math.max(zero, end), y + THICKNESS / 2);
            marks.add(new Mark.Shape(Region.of(outline), FILL, EDGE, 0.2));
        }
        Point at = new Point(Math.max(zero, end) + 1.2, base);
        ChartDrawing.label(marks, ChartWords.number(value), at, ChartDrawing.TEXT, StrokeText.Anchor.START);
    }

    private String name(Chart.Panel panel, int bar) {
        int series = panel.series().size();
        String place = chart.across().labels().get(bar / series);
        String other = panel.series().get(bar % series).name();
        return other.isEmpty() ? place : place + ", " + other;
    }

    private static double value(Chart.Panel panel, int bar) {
        int series = panel.series().size();
        return panel.series().get(bar % series).values().get(bar / series);
    }
}
