package turnalike.web.api;

import java.util.List;
import java.util.Map;
import turnalike.web.api.Operation.Reply;
import turnalike.web.api.Operation.Verb;
import turnalike.web.lan.Sharing;

/** A program on another device paired, as a telephone is: by the code that the host shows. */
final class PairOperation {
    private PairOperation() {}

    static Operation of(Sharing sharing) {
        Map<String, Object> text = Map.of("type", "string");
        Map<String, Object> schema = Map.of(
                "type",
                "object",
                "required",
                List.of("code", "name"),
                "properties",
                Map.of("code", text, "name", text));
        return Operation.of(
                        Verb.POST,
                        "/pair",
                        "pair",
                        "Pairs a program on another device by the code that the host shows; the token goes into the header"
                                + " `Authorization: Bearer` of all else it asks. It is taken back on the host's page of devices.",
                        Reply.json("The token, told this once.", "token").made(),
                        call -> pair(call, sharing))
                .sending(schema, Map.of("code", "000000", "name", "a program"));
    }

    private static Answer pair(Call call, Sharing sharing) {
        Map<String, Object> sent = call.object();
        String token = sharing.pairProgram(
                call.ctx(),
                String.valueOf(sent.getOrDefault("name", "")),
                String.valueOf(sent.getOrDefault("code", "")));
        return Answer.json(Map.of("token", token));
    }
}
