package turnalike.web.api;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import turnalike.job.kept.JobStore;
import turnalike.language.Speech;
import turnalike.web.kit.Abandoned;
import turnalike.web.kit.Feature;
import turnalike.web.kit.ForPrograms;
import turnalike.web.kit.Refusal;
import turnalike.web.kit.Spoken;
import turnalike.web.lan.Sharing;

/** The figures for programs: every operation at its route, and their description. Our own page's scripts ask here too. */
public final class ApiFeature implements Feature, AutoCloseable {
    /** So many figures are worked out at a time; more wait, so that the page is still answered, and so is what only reads or keeps. */
    private static final int AT_ONCE = Math.max(1, Runtime.getRuntime().availableProcessors() / 2);

    private static final int PATIENCE_S = 60;

    private final JobStore store;
    private final JobChanges changes;
    private final Semaphore turns;
    private final List<Operation> operations;
    private final String description;

    /** @param sharing with whom, if other devices are served too */
    public ApiFeature(JobStore store, Optional<Sharing> sharing) {
        this(store, sharing, new Semaphore(AT_ONCE, true));
    }

    /** The same with other turns: each permit is one figure that is worked out. */
    ApiFeature(JobStore store, Optional<Sharing> sharing, Semaphore turns) {
        this.turns = turns;
        this.store = store;
        this.changes = new JobChanges(store);
        List<Operation> all = new ArrayList<>();
        Stream.of(JobOperations.list(), PieceOperations.list())
                .flatMap(List::stream)
                .map(Operation::doneAtOnce)
                .forEach(all::add);
        all.add(changes.operation());
        all.addAll(FigureOperations.list());
        all.addAll(TableOperations.list());
        all.addAll(FileOperations.list());
        sharing.ifPresent(each -> all.add(PairOperation.of(each)));
        JobOperations.last().forEach(each -> all.add(each.doneAtOnce()));
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
        Call call = new Call(ctx, store);
        if (operation.work() instanceof Operation.Work.Later later) {
            later(call, operation.reply(), later);
        } else if (operation.work() instanceof Operation.Work.Now now && operation.atOnce()) {
            now(call, operation.reply(), now);
        } else if (operation.work() instanceof Operation.Work.Now now) {
            inTurn(call, operation.reply(), now);
        }
    }

    private static void later(Call call, Operation.Reply reply, Operation.Work.Later work) {
        CompletableFuture<Answer> coming = work.of(call);
        call.ctx()
                .future(() -> coming.thenAccept(answer -> {
                    if (!Abandoned.is(call.ctx())) {
                        send(call.ctx(), reply, answer);
                    }
                }));
    }

    private static void now(Call call, Operation.Reply reply, Operation.Work.Now work) {
        // What a person will read, and a sheet that is measured in the words it will bear.
        send(call.ctx(), reply, Speech.in(Spoken.by(call.ctx()), () -> work.of(call)));
    }

    private void inTurn(Call call, Operation.Reply reply, Operation.Work.Now work) throws InterruptedException {
        if (!turns.tryAcquire(PATIENCE_S, TimeUnit.SECONDS)) {
            throw Refusal.of(503, "program", "works on other questions", "ask again in a while");
        }
        try {
            now(call, reply, work);
        } finally {
            turns.release();
        }
    }

    private static void send(Context ctx, Operation.Reply reply, Answer answer) {
        ctx.status(reply.status()).contentType(answer.type()).result(answer.bytes());
    }

    @Override
    public void close() {
        changes.close();
    }
}
