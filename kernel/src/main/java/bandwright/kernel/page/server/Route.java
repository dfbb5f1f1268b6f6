// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.server;

import java.util.function.Function;

/**
 * What answers at a path. A path is whole: there are no patterns, and nothing is ever joined to a folder's name.
 *
 * @param changes whether it may change something, so that it is asked by POST alone
 */
public record Route(boolean changes, Function<Request, Reply> work) {
    /** A page, or something that belongs to it. */
    public static Route reads(Function<Request, Reply> work) {
        return new Route(false, work);
    }

    public static Route changes(Function<Request, Reply> work) {
        return new Route(true, work);
    }
}
