// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

/** An operator between two operands that makes a third value of them. */
public enum BinaryOperator {
    POWER("^"),
    MULTIPLY("*"),
    DIVIDE("/"),
    ADD("+"),
    SUBTRACT("-"),
    AND("and"),
    OR("or");

    private final String symbol;

    BinaryOperator(String symbol) {
        this.symbol = symbol;
    }

    public String symbol() {
        return symbol;
    }
}
