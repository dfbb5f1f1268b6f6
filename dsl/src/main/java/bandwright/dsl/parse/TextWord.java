// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.parse;

import bandwright.dsl.source.Span;

/** A word of a text, with what it is where it stands. */
public record TextWord(Role role, Span span, String text) {
    /** What a word is to a reader. */
    public enum Role {
        /** Opens a statement: {@code band}, {@code show}. */
        STATEMENT,
        /** A property or another word of the language: {@code width}, {@code from}. */
        WORD,
        /** A name where it is given its meaning. */
        DEFINED,
        /** A name that is used. */
        NAME,
        /** A form, a function or a measure: a word before a parenthesis. */
        CALL,
        NUMBER,
        UNIT,
        SYSTEM,
        TEXT,
        SIGN,
        BRACKET,
        COMMENT,
        LINE_END,
        /** Something the language does not know. */
        SLIP
    }

    public boolean is(Role one) {
        return role == one;
    }
}
