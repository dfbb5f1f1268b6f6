// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.protocol;

/** The sockets between a kernel and its clients. The names are those of the connection file. */
public enum Channel {
    /** Requests, one after the other. */
    SHELL,
    /** Requests that must not wait: to interrupt, to end. */
    CONTROL,
    /** Questions of the kernel to the user. */
    STDIN,
    /** What all clients hear. */
    IOPUB,
    /** Sends back what it gets, to show that there is life. */
    HB
}
