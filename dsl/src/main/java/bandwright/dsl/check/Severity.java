// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

/** How much it matters when a limit is not held. */
public enum Severity {
    /** It cannot be made or worn so. */
    FAULT,
    /** It may go wrong. */
    RISK,
    /** To be borne in mind: no failure. */
    ADVICE
}
