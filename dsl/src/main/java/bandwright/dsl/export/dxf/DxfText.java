// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export.dxf;

import java.util.Locale;

import bandwright.dsl.export.Digits;

/** Pairs of a group code and its value, a line each. */
final class DxfText {
    private final StringBuilder text = new StringBuilder();

    DxfText add(int code, String value) {
        text.append(String.format(Locale.ROOT, "%3d", code))
                .append('\n')
                .append(ascii(value))
                .append('\n');
        return this;
    }

    DxfText add(int code, int value) {
        return add(code, Integer.toString(value));
    }

    /** A point: its three coordinates have codes ten apart. */
    DxfText point(int code, double x, double y) {
        return number(code, x).number(code + 10, y).number(code + 20, 0);
    }

    /** A length or an angle; always with a point, which some readers tell numbers by. */
    DxfText number(int code, double value) {
        String digits = Digits.of(value);
        return add(code, digits.indexOf('.') < 0 ? digits + ".0" : digits);
    }

    /** Release 12 has one byte a sign; others are written by their number, and none ends the line. */
    private static String ascii(String value) {
        StringBuilder ascii = new StringBuilder();
        for (int i = 0; i < value.length(); i++) {
            char sign = value.charAt(i);
            if (sign >= 0x20 && sign < 0x7f) {
                ascii.append(sign);
            } else {
                ascii.append(String.format(Locale.ROOT, "\\U+%04X", (int) sign));
            }
        }
        return ascii.toString();
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
