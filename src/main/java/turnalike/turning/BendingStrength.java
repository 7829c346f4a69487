package turnalike.turning;

import java.util.List;
import turnalike.wood.Rupture;

/**
 * What the cutting force does to the wood's strength.
 *
 * @param rupture the stress at which the wood breaks on average
 * @param margin what that is divided by to be borne
 * @param strains each member that was cut, where it is bent hardest, the hardest first
 */
public record BendingStrength(Rupture rupture, double margin, List<Strain> strains) {
    public BendingStrength {
        strains = List.copyOf(strains);
    }

    /** {@return the stress that is borne, in MPa} */
    public double allowedMpa() {
        return rupture.mpa() / margin;
    }

    /** {@return the members that the plain cut bends harder than is borne, the hardest first} */
    public List<Strain> beyond() {
        return strains.stream().filter(each -> each.stressMpa() > allowedMpa()).toList();
    }
}
