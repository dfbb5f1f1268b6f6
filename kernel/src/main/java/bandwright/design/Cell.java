// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.design;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.jspecify.annotations.Nullable;

import bandwright.design.host.Hosts;
import bandwright.dsl.view.Chart;

/** What a cell in Java can use by its bare name, beside {@link Units}: the design, and ways to show things and to ask. */
public final class Cell {
    /** The design of the notebook. */
    public static final Design design = new CurrentDesign();

    private Cell() {}

    /**
     * Shows a value at once, as the last value of a cell is shown: records, lists of records and maps as tables, charts and pictures
     * drawn, everything else as text.
     */
    public static void display(@Nullable Object value) {
        Hosts.current().display(value);
    }

    /**
     * Asks the person at the notebook for a line of text.
     *
     * @throws IllegalStateException if nobody can be asked
     */
    public static String ask(String prompt) {
        return Hosts.current()
                .ask(prompt, false)
                .orElseThrow(() -> new IllegalStateException("nobody can be asked for input here"));
    }

    /**
     * Makes the classes of a jar known to what follows, in this cell and in later ones.
     *
     * @param path a jar, or a folder of classes, on this machine; nothing is fetched
     */
    public static void jar(String path) {
        if (path.contains("://")) {
            throw new IllegalArgumentException(
                    "jar takes a file on this machine; fetch the jar first and give its path: " + path);
        }
        Hosts.current().jar(Path.of(path));
    }

    /**
     * A chart of values over others. Over numbers or quantities it has a line with points, over anything else bars.
     *
     * @param across what varies
     * @param values one for each: quantities of one kind, or numbers
     */
    public static Chart chart(String title, String acrossName, List<?> across, String name, List<?> values) {
        if (across.size() != values.size()) {
            throw new IllegalArgumentException(
                    "a chart of " + values.size() + " values over " + across.size() + " places");
        }
        List<String> labels = across.stream().map(String::valueOf).toList();
        boolean lies = !across.isEmpty() && across.stream().allMatch(Cell::isNumber);
        Chart.Axis axis = new Chart.Axis(
                withoutUnit(acrossName, lies ? unit(across) : ""),
                lies ? unit(across) : "",
                labels,
                lies ? numbers(across) : List.of());
        Chart.Series series = new Chart.Series("", numbers(values));
        String plainName = withoutUnit(name, unit(values));
        return new Chart(title, axis, List.of(new Chart.Panel(plainName, unit(values), List.of(series))), List.of());
    }

    /** The axis says the unit by itself; a name that says it already does not say it twice. */
    private static String withoutUnit(String name, String unit) {
        String told = "(" + unit + ")";
        return unit.isEmpty() || !name.endsWith(told)
                ? name
                : name.substring(0, name.length() - told.length()).strip();
    }

    private static boolean isNumber(@Nullable Object value) {
        return value instanceof Quantity || value instanceof Number;
    }

    private static String unit(List<?> values) {
        return !values.isEmpty() && values.get(0) instanceof Quantity quantity ? quantity.unit() : "";
    }

    /** In the unit of the first. */
    private static List<Double> numbers(List<?> values) {
        String unit = unit(values);
        List<Double> numbers = new ArrayList<>();
        for (Object value : values) {
            if (value instanceof Quantity quantity) {
                numbers.add(unit.isEmpty() ? quantity.number() : quantity.count(unit));
            } else if (value instanceof Number number) {
                numbers.add(number.doubleValue());
            } else {
                throw new IllegalArgumentException("a chart wants quantities or numbers, and not " + value);
            }
        }
        return numbers;
    }
}
