package turnalike.settings;

/**
 * The best choice found and what is proven of it; pinned openings are not counted.
 *
 * @param lowerBound no choice has fewer openings
 * @param leastStick no choice takes fewer marks from the stick; {@code lowerBound} is for those that take as many as this choice
 * @param ties whether, of the choices with as few, none is better by the rest of the aim
 */
record ProvenChoice(Choice choice, int leastStick, int lowerBound, boolean ties) {}
