// Bandwright. SPDX-License-Identifier: Apache-2.0
/**
 * Jupyter's messaging protocol, version 5.5, over TCP: the connection file, messages, signatures, sockets. Every socket belongs to
 * one thread, which alone touches it; others hand it frames through a queue. Whatever is malformed, signed wrongly or sent a
 * second time is dropped and logged, never fatal. Knows nothing of what messages ask for, and nothing else of this module.
 *
 * <p>Source: Jupyter Client documentation, "Messaging in Jupyter"; enhancement proposal 65 for the welcome on iopub.
 */
@NullMarked
package bandwright.kernel.protocol;

import org.jspecify.annotations.NullMarked;
