// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve;

import java.util.List;
import java.util.Optional;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.diagnostic.NearNames;
import bandwright.dsl.model.OwnLimit;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.Unit;
import bandwright.dsl.syntax.Expression;
import bandwright.dsl.syntax.Limit;
import bandwright.dsl.syntax.Printer;

/** Reads a limit of the user's own. */
final class LimitReader extends Reader {
    /** A larger share is a per cent sign forgotten. */
    private static final double MOST_SHARE = 2;

    private final KnownLimits known;

    LimitReader(Resolution design, Entry entry, KnownLimits known) {
        super(design, entry);
        this.known = known;
    }

    OwnLimit limit() {
        Limit limit = (Limit) entry.statement();
        String key = limit.name().text();
        Optional<Unit> unit = known.unit(key);
        if (unit.isEmpty()) {
            unknown(limit);
        }
        Expression value = limit.value();
        Sign sign = known.mayBeNegative(key) ? Sign.ANY : Sign.NOT_NEGATIVE;
        double number =
                unit.isEmpty() ? Double.NaN : amount(key, value, unit.get().dimension(), sign);
        if (limit.because() == null) {
            faults.add(Diagnostic.error("limit-without-reason", entry.place())
                    .with(key)
                    .suggestLine("limit " + key + " " + Printer.print(value) + " because \"our caster holds this\""));
        }
        if (unit.filter(Unit.PERCENT::equals).isPresent() && number > MOST_SHARE) {
            Diagnostic.Builder fault = Diagnostic.error("limit-no-share", source.place(value.span()))
                    .with(key, Printer.print(value));
            faults.add(
                    value.isBareNumber()
                            ? fault.suggest(source.place(value.span()), Printer.print(value) + " %")
                            : fault);
        }
        faults.raise();
        Unit shown = unit.orElseThrow();
        return new OwnLimit(
                key,
                entry.place(),
                new Quantity(number, shown.dimension(), shown),
                entry.because().orElseThrow());
    }

    private void unknown(Limit limit) {
        String key = limit.name().text();
        // A word of a limit's name, such as wall, more often means one of those than it is a slip of the pen.
        List<String> holding = known.keys().stream()
                .filter(limitKey -> List.of(limitKey.split("-", -1)).contains(key))
                .toList();
        List<String> near = holding.isEmpty() ? NearNames.nearest(key, known.keys()) : holding;
        Diagnostic.Builder fault =
                Diagnostic.error("unknown-limit", place(limit.name())).with(key);
        faults.add(
                near.isEmpty() || holding.size() > 1
                        ? fault.expected(String.join(", ", near.isEmpty() ? known.keys() : near))
                        : fault.suggest(place(limit.name()), near.get(0)));
    }
}
