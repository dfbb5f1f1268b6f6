// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explore;

import java.util.List;
import java.util.Map;
import java.util.Optional;

import bandwright.dsl.model.Fault;
import bandwright.dsl.resolve.Resolution;
import bandwright.dsl.resolve.expression.Value;

/**
 * One of several designs that stand side by side: what its changed definitions are worth, and what came of it.
 *
 * @param given values that its definitions were given, told even where they cannot be
 */
record Side(String name, Resolution design, Map<String, Value> given, Variant variant) {
    Side {
        given = Map.copyOf(given);
    }

    /** What definitions are worth in it; one that has no value is empty. */
    List<Optional<Value>> definitions(List<String> names) {
        return names.stream().map(this::definition).toList();
    }

    private Optional<Value> definition(String name) {
        Value known = given.get(name);
        if (known != null) {
            return Optional.of(known);
        }
        try {
            return Optional.of(design.valueOf(name));
        } catch (Fault fault) {
            return Optional.empty();
        }
    }

    /** How a requirement came out, in words; empty text where the design cannot be made. */
    String requirement(int number) {
        if (!variant.made()) {
            return "";
        }
        return variant.failed().contains(number) ? "FAILED" : "passed";
    }
}
