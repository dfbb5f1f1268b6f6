// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve.expression;

import java.util.Optional;

import bandwright.dsl.source.Place;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.syntax.Expression;
import bandwright.dsl.syntax.Name;

/** What names stand for where an expression is evaluated; each answer may throw the fault that says why there is none. */
public interface Scope {
    /** The value of a definition, a metal or a stone material. */
    Value value(Name name, SourceText source);

    /** Where a name is defined, if it is. */
    Optional<Place> definedAt(String name);

    /** Whether a name is a part, a row or {@code ring}: something that is measured. */
    boolean isMeasured(String name);

    /** The value of a call that is none of the functions: a measure. */
    Value measure(Expression.Call call, SourceText source);
}
