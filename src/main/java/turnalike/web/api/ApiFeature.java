package turnalike.web.api;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import turnalike.job.kept.JobStore;
import turnalike.language.Speech;
import turnalike.web.kit.Feature;
import turnalike.web.kit.ForPrograms;
import turnalike.web.kit.Refusal;
import turnalike.web.kit.Spoken;
import turnalike.web.lan.Sharing;

/** The figures for programs: every operation at its route, and their description. */
public final class ApiFeature implements Feature {
    /** So many are worked on at a time; more wait, so that the page is still answered. */
    private static final int AT_ONCE = Math.max(1, Runtime.getRuntime().availableProcessors() / 2);

    private static final int PATIENCE_S = 60;

    private final JobStore store;
    private final Semaphore turns = new Semaphore(AT_ONCE, true);
    private final List<Operation> operations;
    private final String description;

    /** @param sharing with whom, if other devices are served too */
    public ApiFeature(JobStore store, Optional<Sharing> sharing) {
        this.store = store;
        List<Operation> all = new ArrayList<>(JobOperations.list());
        all.addAll(PieceOperations.list());
        all.addAll(FigureOperations.list());
        all.addAll(TableOperations.list());
        all.addAll(FileOperations.list());
        sharing.ifPresent(each -> all.add(PairOperation.of(each)));
        all.addAll(JobOperations.last());
        this.operations = List.copyOf(all);
        this.description = Description.of(operations, sharing.isPresent());
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(ForPrograms.PATH + "/openapi.json", ctx -> ctx.contentType(Operation.Reply.JSON)
                .result(description));
        for (Operation each : operations) {
            String path = ForPrograms.PATH + each.path();
            Handler handler = ctx -> answer(ctx, each);
            switch (each.verb()) {
                case GET -> routes.get(path, handler);
                case POST -> routes.post(path, handler);
                case PUT -> routes.put(path, handler);
                case PATCH -> routes.patch(path, handler);
                case DELETE -> routes.delete(path, handler);
            }
        }
    }

    private void answer(Context ctx, Operation operation) throws InterruptedException {
        if (!turns.tryAcquire(PATIENCE_S, TimeUnit.SECONDS)) {
            throw Refusal.of(503, "program", "works on other questions", "ask again in a while");
        }
        try {
            // A sheet is measured in the words it will bear.
            Answer answer = Speech.in(Spoken.by(ctx), () -> operation.work().of(new Call(ctx, store)));
            ctx.status(operation.reply().status()).contentType(answer.type()).result(answer.bytes());
        } finally {
            turns.release();
        }
    }
}
