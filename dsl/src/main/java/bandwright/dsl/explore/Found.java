// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explore;

import bandwright.dsl.view.Table;

/**
 * What {@code find} answers.
 *
 * @param asked what was looked for, in words
 * @param answer the value, or that there is none and how close it came
 * @param path the values that were tried, in that order
 */
public record Found(String asked, String answer, Table path) {}
