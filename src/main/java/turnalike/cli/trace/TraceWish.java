package turnalike.cli.trace;

import java.util.Optional;
import turnalike.photo.PhotoWish;
import turnalike.trace.Snap;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** What the user said besides the source. */
record TraceWish(UnitSystem units, Optional<Length> span, Optional<Length> error, Snap snap, PhotoWish.OnSheet sheet) {}
