package turnalike.job;

import turnalike.stock.Allowances;
import turnalike.stock.boards.Sawing;
import turnalike.units.Length;

/**
 * What is left on while the work goes on, and what the saw takes before.
 *
 * @param sizing how much larger than finished a diameter is sized, before it is cut to the line
 * @param sanding how much of that sanding takes
 * @param stock what the rough blank is larger by
 * @param sawing what sawing it out of a board takes
 */
public record Cutting(Length sizing, Length sanding, Allowances stock, Sawing sawing) {}
