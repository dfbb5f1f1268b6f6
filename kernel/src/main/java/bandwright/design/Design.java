// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.design;

import java.util.function.BinaryOperator;
import java.util.function.UnaryOperator;

/**
 * The design that all cells of the notebook share. What a cell does to it is as if the cell held the same definitions as ring text:
 * running the cell again replaces what it made, and a cell that fails changes nothing.
 *
 * <pre>{@code
 * design.set("breadth", mm(5.5), "the customer's other ring is as wide");
 * design.measure("weight(shank)")
 * }</pre>
 */
public interface Design extends Variant {
    /**
     * Defines a name, in the place of its old definition, as {@code name = expression} in a cell of ring text would. A range that is to
     * stay is written again.
     *
     * @param expression ring text: {@code "platinum-950-ru"}, {@code "breadth / 2"}, {@code "5 mm between 4 mm and 6 mm"}
     * @throws DesignException if the design cannot be made with it; then it stays as it is
     */
    void set(String name, String expression);

    /** As {@link #set(String, String)}, with the reason. */
    void set(String name, String expression, String because);

    default void set(String name, Value value) {
        set(name, value.expression());
    }

    default void set(String name, Value value, String because) {
        set(name, value.expression(), because);
    }

    default void set(String name, double number) {
        set(name, Units.number(number));
    }

    default void set(String name, double number, String because) {
        set(name, Units.number(number), because);
    }

    /**
     * Gives ring text a function: {@code function("tip-room", width -> width.times(0.8))} lets any later cell of ring text write
     * {@code tip-room(breadth)}. It is called whenever ring text needs it, so it must give the same for the same arguments, and it cannot
     * ask the design. It belongs to this cell; what ring text knows of it is this cell's text: when that changes, so does what hangs on it.
     *
     * @param name as names in ring text are written
     * @throws DesignException if ring text has a function or measure of that name already
     */
    void function(String name, UnaryOperator<Quantity> function);

    /** As {@link #function(String, UnaryOperator)}, of two values. */
    void function(String name, BinaryOperator<Quantity> function);

    /**
     * Runs ring text as part of this cell: what it makes belongs to the cell, what it asks is returned.
     *
     * @throws DesignException if it has an error; then the design stays as it is
     */
    Shown run(String ringText);
}
