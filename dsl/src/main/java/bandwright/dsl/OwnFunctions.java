// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.util.List;

import bandwright.dsl.model.Fault;
import bandwright.dsl.quantity.FingerSize;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.resolve.OwnFunction;
import bandwright.dsl.resolve.expression.Value;

/** Functions of other languages on their way in, values on their way out. */
final class OwnFunctions {
    private OwnFunctions() {}

    static OwnFunction of(String cellId, RingFunction function) {
        return new OwnFunction(
                function.name(), cellId, function.version(), arguments -> value(function.body(), arguments));
    }

    private static Value value(RingFunction.Body body, List<Value> arguments) {
        Worked worked = body.value(arguments.stream().map(OwnFunctions::worth).toList());
        Worked.Worth worth = worked.worth();
        if (worth == null) {
            throw new Fault(worked.diagnostics());
        }
        Quantity quantity = worth.quantity();
        FingerSize size = worth.size();
        if (quantity != null) {
            return new Value.Amount(quantity);
        } else if (size != null) {
            return new Value.Size(size);
        }
        return new Value.Words(worth.text());
    }

    static Worked.Worth worth(Value value) {
        return new Worked.Worth(
                value.text(),
                value.kind(),
                value instanceof Value.Amount amount ? amount.quantity() : null,
                value instanceof Value.Size size ? size.size() : null);
    }
}
