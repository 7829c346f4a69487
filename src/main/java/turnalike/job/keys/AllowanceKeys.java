package turnalike.job.keys;

import java.util.List;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeySection;
import turnalike.job.fields.KeyType;
import turnalike.job.fields.KeyType.Group;
import turnalike.job.fields.KeyType.Size;
import turnalike.units.Length;

/** What is left on for the next step. */
public final class AllowanceKeys {
    /** How much over the finished diameter a sizing cut stops. */
    public static final Key<Size> SIZING = Key.may(
                    "sizing", KeyType.size(Length.ZERO), "over the finished diameter when sized", "0")
            .asked(KeySection.ALLOWANCES, "Sized over by", "left empty: none");

    /** The part of the sizing allowance that sanding takes. */
    public static final Key<Size> SANDING = Key.may(
                    "sanding", KeyType.size(Length.ZERO), "the part of `sizing` that sanding takes", "0")
            .asked(KeySection.ALLOWANCES, "Sanding takes", "left empty: none");

    /** Taken off each face of the rough blank. */
    public static final Key<Size> MILLING = Key.may(
                    "milling", KeyType.size(), "taken off each face of the rough blank", "1/16 in or 1.5 mm")
            .asked(KeySection.ALLOWANCES, "Milling, each face", "left empty: the usual");

    /** Cut off each end of the rough blank. */
    public static final Key<Size> TRIMMING = Key.may(
                    "trimming", KeyType.size(), "cut off each end of the rough blank", "1/2 in or 12 mm")
            .asked(KeySection.ALLOWANCES, "Trimming, each end", "left empty: the usual");

    /** All of them, in the order they are told. */
    static final Group GROUP = new Group(List.of(SIZING, SANDING, MILLING, TRIMMING));

    private AllowanceKeys() {}
}
