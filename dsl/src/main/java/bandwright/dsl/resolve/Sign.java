// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve;

/** What a size may be. */
enum Sign {
    ANY,
    NOT_NEGATIVE,
    POSITIVE
}
