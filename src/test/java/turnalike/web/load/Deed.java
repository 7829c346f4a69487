package turnalike.web.load;

import java.io.IOException;
import java.util.Random;
import turnalike.job.kept.JobId;

/** What a client does, and how often of a hundred times. */
enum Deed {
    READ(60),
    EDIT(25),
    BENCH(15);

    private final int share;

    Deed(int share) {
        this.share = share;
    }

    static Deed drawn(Random random) {
        int draw = random.nextInt(100);
        return draw < READ.share ? READ : draw < READ.share + EDIT.share ? EDIT : BENCH;
    }

    /**
     * Does it and waits for the answer.
     *
     * @param name of the piece that is logged, part of the title that is given; no two alike
     * @param number of the client
     * @param i how many it did before
     */
    Client.Answer ask(Client client, JobId job, String name, int number, int i) throws IOException {
        String address = "/jobs/" + job.text();
        return switch (this) {
            case READ -> client.get(address + "?member=" + (1 + i % 5));
            case EDIT -> client.post(address + "/fields", "title=Load+" + name);
            case BENCH -> client.entry(job.text(), "%016x".formatted(number * 1_000_000L + i), name, 200 + i % 40);
        };
    }
}
