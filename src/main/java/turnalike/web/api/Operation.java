package turnalike.web.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;

/**
 * One thing a program can ask for: its route is made from this, and so is what the description says of it.
 *
 * @param verb how it is asked
 * @param path below {@code /api}, its parameters in braces
 * @param name what a client calls it
 * @param summary what it does, a sentence
 * @param params of the path and after the question mark
 * @param body what is sent along, if anything is
 * @param reply what comes back when it is done
 * @param work which does it
 * @param atOnce whether it is done beside whatever else is worked on; what takes a while waits for its turn
 */
record Operation(
        Verb verb,
        String path,
        String name,
        String summary,
        List<Param> params,
        Optional<Body> body,
        Reply reply,
        Work work,
        boolean atOnce) {
    /** How it is asked. */
    enum Verb {
        GET,
        POST,
        PUT,
        PATCH,
        DELETE
    }

    /** What does it. What is wrong with what was asked is thrown as a {@link turnalike.web.kit.Refusal}. */
    sealed interface Work {
        /** Does it while the caller waits. */
        non-sealed interface Now extends Work {
            Answer of(Call call);
        }

        /** Answers when there is something to answer; no thread waits for it. */
        non-sealed interface Later extends Work {
            CompletableFuture<Answer> of(Call call);
        }
    }

    /**
     * A parameter.
     *
     * @param name as in the address
     * @param inPath whether it is a part of the path
     * @param needed whether it must be there
     * @param about what it is
     * @param schema its JSON Schema
     * @param example a value that can be tried; for a job, a version or a piece, what an earlier answer had under the same name
     */
    record Param(String name, boolean inPath, boolean needed, String about, Map<String, ?> schema, Object example) {}

    /**
     * What is sent.
     *
     * @param type as HTTP writes it
     * @param schema its JSON Schema, maps and lists
     * @param example that can be sent as it is
     */
    record Body(String type, Object schema, Object example) {}

    /**
     * What comes back.
     *
     * @param status when it is done
     * @param type as HTTP writes it
     * @param about what it is
     * @param keys those that an object has in any case; empty for what is no object
     */
    record Reply(int status, String type, String about, List<String> keys) {
        static final String JSON = "application/json";

        static Reply json(String about, String... keys) {
            return new Reply(200, JSON, about, List.of(keys));
        }

        Reply made() {
            return new Reply(201, type, about, keys);
        }
    }

    Operation {
        params = List.copyOf(params);
    }

    static Operation of(Verb verb, String path, String name, String summary, Reply reply, Work.Now work) {
        return of(verb, path, name, summary, reply, work, false);
    }

    private static Operation of(
            Verb verb, String path, String name, String summary, Reply reply, Work work, boolean atOnce) {
        List<Param> params = new ArrayList<>();
        if (path.contains("{job}")) {
            params.add(new Param("job", true, true, "the job's id", Map.of("type", "string"), "0000-0000-0000"));
        }
        return new Operation(verb, path, name, summary, params, Optional.empty(), reply, work, atOnce);
    }

    static Operation get(String path, String name, String summary, Reply reply, Work.Now work) {
        return of(Verb.GET, path, name, summary, reply, work);
    }

    /** One that is answered when there is something to answer. */
    static Operation later(String path, String name, String summary, Reply reply, Work.Later work) {
        return of(Verb.GET, path, name, summary, reply, work, true);
    }

    /** The same where it is the store's work alone, which no search is to hold up. */
    Operation doneAtOnce() {
        return new Operation(verb, path, name, summary, params, body, reply, work, true);
    }

    private Operation with(Param param) {
        List<Param> more = new ArrayList<>(params);
        more.add(param);
        return new Operation(verb, path, name, summary, more, body, reply, work, atOnce);
    }

    /** The same with a part of the path. */
    Operation inPath(String param, String about, String example) {
        return with(new Param(param, true, true, about, Map.of("type", "string"), example));
    }

    /** The same with a parameter that may be left out. */
    Operation asking(String param, String about, String example) {
        return with(new Param(param, false, false, about, Map.of("type", "string"), example));
    }

    /** The same with a parameter that is one of these words and may be left out. */
    Operation choosing(String param, String about, String... words) {
        return with(new Param(param, false, false, about, Map.of("type", "string", "enum", List.of(words)), words[0]));
    }

    /** The same, refused with 409 unless the job is still at that version. */
    Operation atVersion() {
        return with(new Param(
                "version",
                false,
                true,
                "the job's version that you saw; another one is answered with 409 and changes nothing",
                Map.of("type", "integer", "minimum", 1),
                1));
    }

    Operation sending(Object schema, Object example) {
        return sending(Reply.JSON, schema, example);
    }

    Operation sending(String type, Object schema, Object example) {
        Body sent = new Body(type, schema, example);
        return new Operation(verb, path, name, summary, params, Optional.of(sent), reply, work, atOnce);
    }
}
