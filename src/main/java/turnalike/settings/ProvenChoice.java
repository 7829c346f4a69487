package turnalike.settings;

/**
 * The best choice found and what is proven of it; pinned openings are not counted.
 *
 * @param lowerBound no choice has fewer openings
 * @param ties whether, of the choices with as few, none is better by the rest of the aim
 */
record ProvenChoice(Choice choice, int lowerBound, boolean ties) {}
