// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explore;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.QuantityFormat;
import bandwright.dsl.quantity.SizeSystem;
import bandwright.dsl.resolve.expression.Value;
import bandwright.dsl.view.Chart;

/** Variants as the data of a chart: the first axis across, a series for each combination of the others, a panel for each number asked. */
final class VaryChart {
    private VaryChart() {}

    /** Nothing if no number was asked, or none of them has a value. */
    static Optional<Chart> of(Variants variants) {
        VariedAxis first = variants.axes().get(0);
        int places = first.values().size();
        int series = variants.rows().size() / places;
        List<ValueColumn> axes = variants.axisColumns();
        List<Chart.Panel> panels = new ArrayList<>();
        for (ValueColumn column : variants.itemColumns()) {
            if (column.isNumbers()) {
                List<Chart.Series> lines = new ArrayList<>();
                for (int i = 0; i < series; i++) {
                    lines.add(new Chart.Series(name(axes, i), values(column, i, series, places)));
                }
                panels.add(new Chart.Panel(column.name(), column.unitText(), lines));
            }
        }
        List<Chart.Panel> all = List.copyOf(panels);
        panels.replaceAll(panel -> withSome(panel, all));
        if (panels.isEmpty() || panels.get(0).series().isEmpty()) {
            return Optional.empty();
        }
        List<String> notes = new ArrayList<>();
        List<Chart.Panel> moving =
                panels.stream().filter(panel -> !isLevel(panel)).toList();
        if (!moving.isEmpty()) {
            panels.stream().filter(VaryChart::isLevel).forEach(panel -> notes.add(level(panel)));
        }
        return Optional.of(new Chart(
                "Variants of " + String.join(", ", variants.axisNames()),
                across(first, axes.get(0), series, places),
                moving.isEmpty() ? panels : moving,
                notes));
    }

    /** Whether nothing that varies changes it: then a sentence says more than a panel. */
    private static boolean isLevel(Chart.Panel panel) {
        List<Double> values = values(panel);
        return values.stream()
                .allMatch(value -> Math.abs(value - values.get(0)) <= Quantity.EQUAL_WITHIN * Math.abs(values.get(0)));
    }

    private static String level(Chart.Panel panel) {
        return values(panel).isEmpty()
                ? panel.name() + " has no value."
                : panel.name() + " is the same throughout: "
                        + (QuantityFormat.number(values(panel).get(0), 3) + " " + panel.unit()).strip() + ".";
    }

    private static List<Double> values(Chart.Panel panel) {
        return panel.series().stream()
                .flatMap(series -> series.values().stream())
                .filter(value -> !value.isNaN())
                .toList();
    }

    /** A panel without the series that have no value in any panel: they would only stand in the legend. */
    private static Chart.Panel withSome(Chart.Panel panel, List<Chart.Panel> all) {
        return new Chart.Panel(
                panel.name(),
                panel.unit(),
                panel.series().stream()
                        .filter(series -> all.stream()
                                .flatMap(other -> other.series().stream())
                                .filter(other -> other.name().equals(series.name()))
                                .flatMap(other -> other.values().stream())
                                .anyMatch(value -> !value.isNaN()))
                        .toList());
    }

    /** The other axes' values; the first axis moves slowest, so the first rows have all combinations of the others. */
    private static String name(List<ValueColumn> axes, int row) {
        List<String> parts = new ArrayList<>();
        for (ValueColumn axis : axes.subList(1, axes.size())) {
            String unit = axis.unitText();
            parts.add(axis.name() + " " + axis.cell(row) + (unit.isEmpty() ? "" : " " + unit));
        }
        return String.join(", ", parts);
    }

    private static List<Double> values(ValueColumn column, int first, int stride, int places) {
        return IntStream.range(0, places)
                .mapToObj(place -> column.number(first + place * stride))
                .toList();
    }

    private static Chart.Axis across(VariedAxis axis, ValueColumn column, int stride, int places) {
        List<String> labels = IntStream.range(0, places)
                .mapToObj(place -> column.cell(place * stride))
                .toList();
        if (column.isNumbers()) {
            return new Chart.Axis(axis.name(), column.unitText(), labels, values(column, 0, stride, places));
        }
        Optional<SizeSystem> system = system(axis);
        List<Double> numbers = system.isEmpty()
                ? List.of()
                : axis.values().stream()
                        .map(value -> ((Value.Size) value).size().number())
                        .toList();
        return new Chart.Axis(axis.name(), system.map(SizeSystem::word).orElse(""), labels, numbers);
    }

    /** The one system of all values, if it counts in numbers and not in letters. */
    private static Optional<SizeSystem> system(VariedAxis axis) {
        List<SizeSystem> systems = axis.values().stream()
                .map(value -> value instanceof Value.Size size ? size.size().system() : SizeSystem.UK)
                .distinct()
                .toList();
        return systems.size() == 1 && systems.get(0) != SizeSystem.UK ? Optional.of(systems.get(0)) : Optional.empty();
    }
}
