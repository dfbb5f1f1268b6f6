// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.model;

import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.source.Place;

/**
 * A limit of the checks as the user's own bench holds it.
 *
 * @param key which limit
 * @param reason why it may be another one
 */
public record OwnLimit(String key, Place place, Quantity value, String reason) {}
