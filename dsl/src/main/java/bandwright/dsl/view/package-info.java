// Bandwright. SPDX-License-Identifier: Apache-2.0
/**
 * What a person gets to see, as plain data: pictures and tables. May depend on {@code geometry} and {@code material}; knows neither the language nor a ring's model.
 */
@NullMarked
package bandwright.dsl.view;

import org.jspecify.annotations.NullMarked;
