// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.drawing;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.quantity.QuantityFormat;
import bandwright.dsl.view.Chart;

/** What a chart shows, for a reader who cannot see it: the least and the largest of each line, and where they are. */
final class ChartWords {
    /** More lines than this are told of in one sentence. */
    private static final int MOST_LINES = 6;

    private ChartWords() {}

    static String of(Chart chart) {
        List<String> sentences = new ArrayList<>();
        for (Chart.Panel panel : chart.panels()) {
            String heading = panel.heading() + " over " + chart.across().heading();
            if (panel.series().size() > MOST_LINES) {
                sentences.add(heading + ", " + panel.series().size() + " lines.");
                continue;
            }
            for (Chart.Series series : panel.series()) {
                String which = series.name().isEmpty() ? "" : " for " + series.name();
                sentences.add(heading + which + ": " + range(chart.across(), series) + ".");
            }
        }
        return String.join(" ", sentences);
    }

    private static String range(Chart.Axis across, Chart.Series series) {
        int least = -1;
        int most = -1;
        for (int i = 0; i < series.values().size(); i++) {
            double value = series.values().get(i);
            if (Double.isNaN(value)) {
                continue;
            }
            least = least < 0 || value < series.values().get(least) ? i : least;
            most = most < 0 || value > series.values().get(most) ? i : most;
        }
        if (least < 0) {
            return "no values";
        }
        String low = number(series.values().get(least));
        if (low.equals(number(series.values().get(most)))) {
            boolean all = series.values().stream().noneMatch(value -> Double.isNaN(value));
            return all ? "always " + low : low + " wherever it has a value";
        }
        return "least " + at(across, series, least) + ", largest " + at(across, series, most);
    }

    private static String at(Chart.Axis across, Chart.Series series, int place) {
        return number(series.values().get(place)) + " at " + across.labels().get(place);
    }

    static String number(double value) {
        return QuantityFormat.number(value, 3);
    }
}
