// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

/** A property of a channel: width, notch, lip, floor, bars every. */
public sealed interface ChannelProperty extends Property permits Property.Amount {}
