// Bandwright. SPDX-License-Identifier: Apache-2.0
/**
 * What the bench needs to know beside the ring itself: finger sizes side by side, the blank, what goes to the caster, the
 * order of work, and the cautions that go with it. Each is a table. Texts and their sources are in
 * {@code sentences.properties}.
 */
@NullMarked
package bandwright.dsl.bench;

import org.jspecify.annotations.NullMarked;
