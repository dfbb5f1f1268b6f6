// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.session;

import com.fasterxml.jackson.databind.node.ObjectNode;

/** What the other end of a comm may speak to. Called on the thread that answers shell. */
public interface CommTarget {
    /** A client opened a comm; it is heard until it closes. */
    default void opened(Comm comm, ObjectNode data) {}

    void heard(Comm comm, ObjectNode data);

    /** The client closed it. */
    default void closed(Comm comm, ObjectNode data) {}
}
