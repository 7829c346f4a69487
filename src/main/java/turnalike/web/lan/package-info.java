/**
 * Sharing the page on the local network, only when asked: a code shown on the host pairs a device, each device has a name and can be shown
 * out. May use everything {@code web} may.
 */
@NullMarked
package turnalike.web.lan;

import org.jspecify.annotations.NullMarked;
