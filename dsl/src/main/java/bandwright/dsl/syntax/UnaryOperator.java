// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

/** An operator before its one operand. */
public enum UnaryOperator {
    NEGATE("-"),
    PLUS("+"),
    NOT("not");

    private final String symbol;

    UnaryOperator(String symbol) {
        this.symbol = symbol;
    }

    public String symbol() {
        return symbol;
    }
}
