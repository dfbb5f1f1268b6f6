// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view;

import java.util.List;

/**
 * Numbers to be drawn as a chart: one panel for each thing measured, all over one axis.
 *
 * @param across what varies, the same for all panels
 * @param notes sentences on what is not drawn
 */
public record Chart(String title, Axis across, List<Panel> panels, List<String> notes) {
    public Chart {
        panels = List.copyOf(panels);
        notes = List.copyOf(notes);
        for (Panel panel : panels) {
            for (Series series : panel.series()) {
                if (series.values().size() != across.labels().size()) {
                    throw new IllegalArgumentException(
                            "A series of " + series.values().size() + " over "
                                    + across.labels().size() + " places");
                }
            }
        }
    }

    /**
     * @param unit of the numbers, or empty text
     * @param labels a text for each place
     * @param numbers where each place lies, in the unit; empty if the places are words without an order
     */
    public record Axis(String name, String unit, List<String> labels, List<Double> numbers) {
        public Axis {
            labels = List.copyOf(labels);
            numbers = List.copyOf(numbers);
        }

        public boolean isNumbers() {
            return !numbers.isEmpty();
        }

        /** The name, and the unit in brackets if there is one. */
        public String heading() {
            return unit.isEmpty() ? name : name + " (" + unit + ")";
        }
    }

    /** One thing that was measured. */
    public record Panel(String name, String unit, List<Series> series) {
        public Panel {
            series = List.copyOf(series);
        }

        public String heading() {
            return unit.isEmpty() ? name : name + " (" + unit + ")";
        }
    }

    /**
     * One line, or one bar at each place.
     *
     * @param name what sets it apart from the others; empty text if it is alone
     * @param values one for each place of the axis; not-a-number where there is none
     */
    public record Series(String name, List<Double> values) {
        public Series {
            values = List.copyOf(values);
        }
    }
}
