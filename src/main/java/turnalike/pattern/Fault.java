package turnalike.pattern;

import turnalike.units.LengthMessage;

/**
 * Why a member or a pattern cannot exist.
 *
 * @param key the size at fault, as the job file calls it
 * @param what what is wrong, with the figures
 * @param mend what to do about it
 */
public record Fault(String key, LengthMessage what, String mend) {}
