package turnalike.web.match;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import turnalike.job.Job;
import turnalike.job.edit.HandEdit;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.JobText;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptPiece;
import turnalike.job.pieces.MatchJob;
import turnalike.job.set.ByHand;
import turnalike.job.set.SetMatch;
import turnalike.pieces.Piece;
import turnalike.units.Problem;
import turnalike.web.kit.JobAddress;
import turnalike.web.kit.Pages;
import turnalike.web.kit.Refusal;
import turnalike.web.kit.RequestInput;

/** What a person does to a set with their own hands: hold, release, swap, try, have the rest searched again, take what was found. */
final class HandDeeds {
    private static final String MATCH = JobAddress.JOB + "/match";
    private static final int LEAST_S = 2;
    private static final int LONGEST_S = 600;
    private static final int WAITED_MS = 1_500;

    private final JobStore store;
    private final Pages pages;
    private final SetSearches searches;

    HandDeeds(JobStore store, Pages pages, SetSearches searches) {
        this.store = store;
        this.pages = pages;
        this.searches = searches;
    }

    void addTo(RoutesConfig routes) {
        routes.post(MATCH + "/hand", this::hand);
        routes.get(MATCH + "/try", this::attempt);
        routes.post(MATCH + "/rest", this::rest);
        routes.post(MATCH + "/take", this::take);
    }

    /** What is settled from now on, and what that is called in the history. */
    private record Deed(ByHand hand, String words) {}

    private void hand(Context ctx) {
        if (RequestInput.field(ctx, "free").isPresent()) {
            keep(ctx, before -> new Deed(ByHand.NONE, "let the whole set be searched"));
            return;
        }
        List<String> shown = RequestInput.field(ctx, "order")
                .map(text -> text.lines().filter(line -> !line.isEmpty()).toList())
                .filter(order -> !order.isEmpty() && new HashSet<>(order).size() == order.size())
                .orElseThrow(() -> Refusal.of(422, "order", "does not name the pieces", "load the page again"));
        keep(ctx, before -> deed(ctx, before, shown));
    }

    private static Deed deed(Context ctx, ByHand before, List<String> shown) {
        Optional<String> hold = RequestInput.field(ctx, "hold");
        Optional<String> release = RequestInput.field(ctx, "release");
        if (hold.isPresent()) {
            int place = place(shown, hold.get());
            SortedMap<Integer, String> held =
                    new TreeMap<>(before.ordered(shown).held());
            held.put(place, hold.get());
            return new Deed(new ByHand(shown, held, false), "hold piece %s at place %d".formatted(hold.get(), place));
        }
        if (release.isPresent()) {
            SortedMap<Integer, String> held =
                    new TreeMap<>(before.ordered(shown).held());
            held.values().removeIf(release.get()::equals);
            return new Deed(new ByHand(shown, held, false), "release piece " + release.get());
        }
        String one = RequestInput.field(ctx, "one").orElse("");
        String other = RequestInput.field(ctx, "other").orElse("");
        return new Deed(swapped(before, shown, one, other), "swap pieces %s and %s".formatted(one, other));
    }

    private static int place(List<String> order, String label) {
        int index = order.indexOf(label);
        if (index < 0) {
            throw Refusal.of(422, "piece " + label, "stands at no place", "choose one that is placed");
        }
        return index + 1;
    }

    /** The two change places, or one comes in for the other; what is held goes with its piece. */
    private static ByHand swapped(ByHand before, List<String> shown, String one, String other) {
        List<String> order = new ArrayList<>(shown);
        int first = order.indexOf(one);
        int second = order.indexOf(other);
        if (one.equals(other) || (first < 0 && second < 0)) {
            throw Refusal.of(422, "swap", "needs two pieces, one of them placed", "choose two that differ");
        }
        if (first >= 0 && second >= 0) {
            Collections.swap(order, first, second);
        } else {
            order.set(Math.max(first, second), first >= 0 ? other : one);
        }
        SortedMap<Integer, String> held = new TreeMap<>();
        for (String label : before.ordered(shown).held().values()) {
            int place = order.indexOf(label) + 1;
            if (place > 0) {
                held.put(place, label);
            }
        }
        return new ByHand(order, held, false);
    }

    private interface Settle {
        Deed after(ByHand before);
    }

    /** Keeps it as an edit, unless somebody else placed otherwise meanwhile or it cannot be. */
    private void keep(Context ctx, Settle settle) {
        KeptJob before = JobAddress.job(ctx, store);
        // Asked before the edit's turn: the history cannot be read within it.
        ByHand seen = seen(ctx, before);
        store.edit(before.id(), kept -> {
            ByHand now = kept.text().job().byHand();
            if (!now.equals(seen)) {
                throw Refusal.of(
                        409,
                        "by hand",
                        "the set was placed otherwise meanwhile",
                        "look at it as it is now, then do yours again");
            }
            Deed deed = settle.after(now);
            HandEdit edit = new HandEdit(deed.hand(), deed.words());
            JobText.Read read = edit.on(kept.text());
            JobText text = read.text().orElseThrow(() -> new Refusal(422, read.problems()));
            if (deed.hand().isAny()) {
                List<Problem> problems = MatchJob.problems(text.job(), pieces(kept));
                if (!problems.isEmpty()) {
                    throw new Refusal(422, problems);
                }
            }
            return Edit.of(edit.what(kept.text()), Change.of(text));
        });
        // Whoever looks through many pieces left over stays where they were among them.
        String part = RequestInput.number(RequestInput.field(ctx, "left"))
                .map(left -> "?left=" + left)
                .orElse("");
        ctx.redirect(JobAddress.address(before.id()) + "/match" + part, HttpStatus.SEE_OTHER);
    }

    private ByHand seen(Context ctx, KeptJob kept) {
        int version = RequestInput.number(RequestInput.field(ctx, "version"))
                .orElse(kept.times().steps());
        return version >= kept.times().steps()
                ? kept.text().job().byHand()
                : store.textAfter(kept.id(), version)
                        .map(text -> text.job().byHand())
                        .orElse(kept.text().job().byHand());
    }

    private static List<Piece> pieces(KeptJob kept) {
        return kept.pieces().stream().map(KeptPiece::piece).toList();
    }

    /** What a swap would make of the figures, beside what they are; nothing is kept. */
    private void attempt(Context ctx) {
        KeptJob kept = JobAddress.job(ctx, store);
        Optional<SetMatch> found = searches.find(kept).flatMap(SetSearch::found);
        if (found.isEmpty()) {
            ctx.status(HttpStatus.NO_CONTENT); // it was changed meanwhile, and is being looked for
            return;
        }
        SetMatch now = found.get();
        String one = RequestInput.query(ctx, "one").orElse("");
        String other = RequestInput.query(ctx, "other").orElse("");
        Job job = kept.text().job();
        Job tried = job.with(swapped(job.byHand(), now.order(), one, other));
        List<Problem> problems = MatchJob.problems(tried, pieces(kept));
        if (!problems.isEmpty()) {
            throw new Refusal(422, problems);
        }
        SetMatch then = MatchJob.glance(tried, pieces(kept));
        pages.show(ctx, 200, "match/figures.jte", "", HandFigures.of(now, Optional.of(then), job.units()));
    }

    private void rest(Context ctx) {
        KeptJob kept = JobAddress.job(ctx, store);
        int seconds = RequestInput.number(RequestInput.field(ctx, "seconds")).orElse(LEAST_S);
        boolean strict =
                RequestInput.field(ctx, "strict").filter("true"::equals).isPresent();
        boolean possible = kept.text().job().byHand().isAny()
                && MatchJob.problems(kept.text().job(), pieces(kept)).isEmpty();
        if (possible) {
            searches.beginRest(kept, Math.max(LEAST_S, Math.min(LONGEST_S, seconds)), strict)
                    .await(seconds <= LEAST_S ? WAITED_MS : 50);
        }
        ctx.redirect(JobAddress.address(kept.id()) + "/match", HttpStatus.SEE_OTHER);
    }

    private void take(Context ctx) {
        KeptJob kept = JobAddress.job(ctx, store);
        SetMatch found = searches.findRest(kept)
                .flatMap(SetSearch::found)
                .orElseThrow(() -> Refusal.of(
                        409, "the set found", "belongs to how the job stood before", "have the rest searched again"));
        keep(ctx, before -> new Deed(before.ordered(found.order()), taken(before.held())));
    }

    private static String taken(Map<Integer, String> held) {
        return held.isEmpty() ? "take the set found" : "take the set found round %d held".formatted(held.size());
    }
}
