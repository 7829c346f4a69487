package turnalike.job.kept;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What was done in one step, without what it changed.
 *
 * @param number the step's, from 1
 * @param at when
 * @param did what sort of step
 * @param of the number of the step that it undid or redid; empty for an edit
 * @param what in the user's words
 * @param who took it; empty where nobody was named
 */
public record StepSummary(int number, Instant at, Step.Did did, OptionalInt of, String what, Optional<String> who) {}
