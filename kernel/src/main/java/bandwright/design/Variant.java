// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.design;

import java.util.List;

import bandwright.dsl.view.Table;

/**
 * A design that can be asked but not changed. All texts are ring text; what is wrong with one, or cannot be worked out, is thrown as a
 * {@link DesignException} with the language's own sentence.
 *
 * <pre>{@code
 * for (double width = 3; width <= 6; width += 0.5) {
 *     System.out.println(mm(width) + "  " + design.with("breadth", mm(width)).measure("weight(shank)"));
 * }
 * }</pre>
 */
public interface Variant {
    /** What an expression is worth, a number or a quantity: {@code get("breadth")}. */
    Quantity get(String expression);

    /** The same as {@link #get}, for measures: {@code measure("weight(shank)")}. */
    default Quantity measure(String expression) {
        return get(expression);
    }

    /** What an expression is worth, a finger size: {@code size("finger-size")}. */
    Size size(String expression);

    /** Whether a condition holds: {@code holds("wall(shank) >= 0.6 mm")}. */
    boolean holds(String condition);

    /** What any expression is worth, as the language shows it: {@code text("shank-metal")}. */
    String text(String expression);

    /** What {@code show} shows: {@code show("ring")}, {@code show("section at 0 deg")}, {@code show("weights")}. */
    Shown show(String subject);

    /**
     * This design with one definition worth something else. It stands beside; the design that is asked stays as it is.
     *
     * @param expression ring text: {@code "platinum-950-ru"}, {@code "US 8"}
     */
    Variant with(String name, String expression);

    default Variant with(String name, Value value) {
        return with(name, value.expression());
    }

    default Variant with(String name, double number) {
        return with(name, Units.number(number));
    }

    /** Expressions worked out for several values of one definition, a row for each; what cannot be made says why in its row. */
    Table table(String name, List<? extends Value> values, String... expressions);
}
