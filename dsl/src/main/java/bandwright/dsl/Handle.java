// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.util.ArrayList;
import java.util.List;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.explore.Explorer;
import bandwright.dsl.model.Fault;
import bandwright.dsl.resolve.Entry;
import bandwright.dsl.resolve.Kind;
import bandwright.dsl.resolve.Resolution;
import bandwright.dsl.resolve.expression.Value;

/**
 * A definition with a range, which a person may move. All values are texts of the language, ready for {@link Workbench#withValue}.
 *
 * @param value what it is now
 * @param step its own, or else one that divides the range finely; a plain number for finger sizes
 * @param stops all values a step apart from the low end on; empty if they are more than a slider shows
 * @param because the reason given with it
 */
public record Handle(
        String name,
        String value,
        String low,
        String high,
        String step,
        List<String> stops,
        @Nullable String because) {
    private static final int MOST_STOPS = 2000;

    public Handle {
        stops = List.copyOf(stops);
    }

    static List<Handle> of(Resolution design) {
        List<Handle> handles = new ArrayList<>();
        for (String name : design.definitions().names(Kind.DEFINITION)) {
            try {
                String value = design.valueOf(name).text();
                design.handle(name).map(handle -> of(design, handle, value)).ifPresent(handles::add);
            } catch (Fault fault) {
                // Its own cell has said so; there is nothing to move yet.
            }
        }
        return handles;
    }

    private static Handle of(Resolution design, bandwright.dsl.resolve.Handle handle, String value) {
        return new Handle(
                handle.name(),
                value,
                handle.low().text(),
                handle.high().text(),
                Explorer.step(handle).text(),
                Explorer.stops(handle, MOST_STOPS).stream().map(Value::text).toList(),
                design.definitions().find(handle.name()).flatMap(Entry::because).orElse(null));
    }
}
