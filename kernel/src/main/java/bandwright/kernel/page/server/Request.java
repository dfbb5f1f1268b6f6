// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.server;

/**
 * What a browser asks, after the door has let it in.
 *
 * @param body of a POST, at most {@link Door#LARGEST_BODY}; they belong to the request and nobody writes to them
 * @param nonce for scripts and styles of a page that answers it
 * @param key which the page must send along with each POST
 */
@SuppressWarnings("ArrayRecordComponent")
public record Request(byte[] body, String nonce, String key) {}
