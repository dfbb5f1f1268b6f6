// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.session;

/** Does what one type of request asks for. */
@FunctionalInterface
interface Handler {
    void handle(Exchange exchange) throws BadRequest;
}
