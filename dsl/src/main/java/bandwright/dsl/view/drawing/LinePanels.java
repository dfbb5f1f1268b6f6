// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.view.Chart;
import bandwright.dsl.view.image.StrokeText;

/** Panels with lines over an axis of numbers. The axis has its labels once, under the last panel. */
final class LinePanels {
    private static final double HEIGHT = 46;
    private static final double BETWEEN = 12;

    /** Room left of the first and right of the last place, mm. */
    private static final double INSET = 4;

    /** More places than these would not be told apart. */
    private static final int MOST_PLACES = 200;

    /** More markers than these would touch. */
    private static final int MOST_MARKERS = 40;

    private final Chart chart;
    private final List<Mark> marks;
    private final List<Integer> places;
    private final List<Integer> lines;
    private final double low;
    private final double high;

    private LinePanels(Chart chart, List<Mark> marks) {
        this.chart = chart;
        this.marks = marks;
        List<Double> numbers = chart.across().numbers();
        places = new ArrayList<>(ChartDrawing.evenly(numbers.size(), MOST_PLACES));
        places.sort(Comparator.comparing((Integer place) -> numbers.get(place)));
        lines = ChartDrawing.evenly(chart.panels().get(0).series().size(), LineStyle.ALL.size());
        double least = numbers.get(places.get(0));
        double most = numbers.get(places.get(places.size() - 1));
        double widened = least < most ? 0 : Math.max(1, Math.abs(least)) / 2;
        low = least - widened;
        high = most + widened;
    }

    /** Draws all panels downwards from the height 0. */
    static void draw(Chart chart, List<Mark> marks, List<String> notes) {
        LinePanels panels = new LinePanels(chart, marks);
        double top = 0;
        for (Chart.Panel panel : chart.panels()) {
            panels.draw(panel, top);
            top -= HEIGHT + BETWEEN;
        }
        double floor = top + BETWEEN;
        panels.labels(floor);
        panels.legend(floor - 5.6 * ChartDrawing.TEXT);
        int all = chart.panels().get(0).series().size();
        if (panels.lines.size() < all) {
            notes.add("Drawn are " + panels.lines.size() + " of " + all + " lines; the table has all.");
        }
    }

    private void draw(Chart.Panel panel, double top) {
        Point corner = new Point(0, top + 0.8 * ChartDrawing.TEXT);
        ChartDrawing.label(marks, panel.heading(), corner, ChartDrawing.TEXT, StrokeText.Anchor.START);
        Ticks ticks = ticks(panel);
        double floor = top - HEIGHT;
        List<Double> values = ticks.values();
        List<String> labels = ticks.labels();
        for (int i = 0; i < values.size(); i++) {
            double y = y(values.get(i), ticks, floor);
            ChartDrawing.line(marks, new Point(0, y), new Point(ChartDrawing.WIDTH, y), ChartDrawing.HELP, 0.15);
            Point at = new Point(-1.2, y - 0.3 * ChartDrawing.TEXT);
            ChartDrawing.label(marks, labels.get(i), at, ChartDrawing.TEXT, StrokeText.Anchor.END);
        }
        ChartDrawing.line(marks, new Point(0, floor), new Point(ChartDrawing.WIDTH, floor), ChartDrawing.INK, 0.25);
        for (double tick : acrossTicks().values()) {
            ChartDrawing.line(marks, new Point(x(tick), floor), new Point(x(tick), floor - 1), ChartDrawing.INK, 0.25);
        }
        for (int i = 0; i < lines.size(); i++) {
            line(panel.series().get(lines.get(i)), LineStyle.ALL.get(i), ticks, floor);
        }
    }

    private Ticks ticks(Chart.Panel panel) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int line : lines) {
            for (int place : places) {
                double value = panel.series().get(line).values().get(place);
                if (!Double.isNaN(value)) {
                    least = Math.min(least, value);
                    most = Math.max(most, value);
                }
            }
        }
        if (least > most) {
            return Ticks.around(0, 1, 2);
        }
        // Values that differ by rounding alone are drawn level.
        boolean level = most - least <= 1e-9 * Math.max(Math.abs(least), Math.abs(most));
        double widened = level ? Math.max(1e-6, Math.abs(least) / 10) : 0;
        return Ticks.around(least - widened, most + widened, 5);
    }

    /** A value that is missing parts the line. */
    private void line(Chart.Series series, LineStyle style, Ticks ticks, double floor) {
        List<Point> run = new ArrayList<>();
        List<Point> points = new ArrayList<>();
        for (int place : places) {
            double value = series.values().get(place);
            if (Double.isNaN(value)) {
                stroke(run, style);
                run = new ArrayList<>();
                continue;
            }
            Point point = new Point(x(chart.across().numbers().get(place)), y(value, ticks, floor));
            run.add(point);
            points.add(point);
        }
        stroke(run, style);
        for (int i : ChartDrawing.evenly(points.size(), MOST_MARKERS)) {
            marks.add(style.marker(points.get(i)));
        }
    }

    private void stroke(List<Point> run, LineStyle style) {
        if (run.size() > 1) {
            marks.add(style.line(run));
        }
    }

    private void labels(double floor) {
        Ticks ticks = acrossTicks();
        List<Double> values = ticks.values();
        List<String> labels = ticks.labels();
        for (int i = 0; i < values.size(); i++) {
            Point at = new Point(x(values.get(i)), floor - 1.4 - ChartDrawing.TEXT);
            ChartDrawing.label(marks, labels.get(i), at, ChartDrawing.TEXT, StrokeText.Anchor.MIDDLE);
        }
        Point middle = new Point(ChartDrawing.WIDTH / 2, floor - 3.2 * ChartDrawing.TEXT);
        ChartDrawing.label(marks, chart.across().heading(), middle, ChartDrawing.TEXT, StrokeText.Anchor.MIDDLE);
    }

    /** The finest ticks whose labels have room beside one another. */
    private Ticks acrossTicks() {
        for (int most = 16; ; most--) {
            Ticks ticks = Ticks.inside(low, high, most);
            double widest = ticks.labels().stream()
                    .mapToDouble(label -> Mark.Label.length(label, ChartDrawing.TEXT))
                    .max()
                    .orElse(0);
            double apart = ticks.step().doubleValue() / (high - low) * (ChartDrawing.WIDTH - 2 * INSET);
            if (widest + ChartDrawing.TEXT < apart || most == 2) {
                return ticks;
            }
        }
    }

    private void legend(double top) {
        double y = top;
        for (int i = 0; i < lines.size(); i++) {
            String name = chart.panels().get(0).series().get(lines.get(i)).name();
            if (name.isEmpty()) {
                continue;
            }
            double middle = y + 0.3 * ChartDrawing.TEXT;
            LineStyle style = LineStyle.ALL.get(i);
            marks.add(style.line(List.of(new Point(0, middle), new Point(12, middle))));
            marks.add(style.marker(new Point(6, middle)));
            ChartDrawing.label(marks, name, new Point(14, y), ChartDrawing.TEXT, StrokeText.Anchor.START);
            y -= 1.6 * ChartDrawing.TEXT;
        }
    }

    private double x(double number) {
        return INSET + (number - low) / (high - low) * (ChartDrawing.WIDTH - 2 * INSET);
    }

    private static double y(double value, Ticks ticks, double floor) {
        return floor + (value - ticks.low()) / (ticks.high() - ticks.low()) * HEIGHT;
    }
}
