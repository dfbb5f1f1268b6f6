// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.design;

import java.util.List;
import java.util.function.BinaryOperator;
import java.util.function.UnaryOperator;

import bandwright.design.host.Hosts;
import bandwright.dsl.view.Table;

/** The design of whatever cell runs. */
final class CurrentDesign implements Design {
    private static Design now() {
        return Hosts.current().design();
    }

    @Override
    public Quantity get(String expression) {
        return now().get(expression);
    }

    @Override
    public Size size(String expression) {
        return now().size(expression);
    }

    @Override
    public boolean holds(String condition) {
        return now().holds(condition);
    }

    @Override
    public String text(String expression) {
        return now().text(expression);
    }

    @Override
    public Shown show(String subject) {
        return now().show(subject);
    }

    @Override
    public Variant with(String name, String expression) {
        return now().with(name, expression);
    }

    @Override
    public Table table(String name, List<? extends Value> values, String... expressions) {
        return now().table(name, values, expressions);
    }

    @Override
    public void set(String name, String expression) {
        now().set(name, expression);
    }

    @Override
    public void set(String name, String expression, String because) {
        now().set(name, expression, because);
    }

    @Override
    public void function(String name, UnaryOperator<Quantity> function) {
        now().function(name, function);
    }

    @Override
    public void function(String name, BinaryOperator<Quantity> function) {
        now().function(name, function);
    }

    @Override
    public Shown run(String ringText) {
        return now().run(ringText);
    }

    @Override
    public String toString() {
        return "the design";
    }
}
