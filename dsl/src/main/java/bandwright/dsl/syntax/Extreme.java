// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

/** Which end {@code find} looks for. */
public enum Extreme {
    LARGEST,
    SMALLEST
}
