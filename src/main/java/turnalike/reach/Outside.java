package turnalike.reach;

import java.util.Optional;

/**
 * What of the world outside the page is open to, beside this machine.
 *
 * @param lan whether it is served at every address of this machine
 * @param certificate with which it is served encrypted; without it, it is not
 * @param behind the address of a server before it, which passes requests on from this same machine
 */
public record Outside(boolean lan, Optional<OwnCertificate> certificate, Optional<PublicAddress> behind) {
    /**
     * {@return neither encrypted nor behind another server}
     *
     * @param lan whether it is served at every address of this machine
     */
    public static Outside plain(boolean lan) {
        return new Outside(lan, Optional.empty(), Optional.empty());
    }
}
