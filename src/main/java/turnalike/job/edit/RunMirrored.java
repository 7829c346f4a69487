package turnalike.job.edit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import turnalike.job.kept.JobText;
import turnalike.pattern.Member;

/** The whole run turned end for end. */
public record RunMirrored() implements JobEdit {
    @Override
    public String what(JobText before) {
        return "turn the run end for end";
    }

    @Override
    public JobText.Read on(JobText text) {
        JobTree tree = JobTree.of(text);
        List<Member> members = text.job().pattern().members();
        for (int i = 0; i < members.size(); i++) {
            MemberFields.mirror(tree.member(i + 1), members.get(i), text.job().units());
        }
        ArrayNode run = tree.members();
        List<JsonNode> turned = new ArrayList<>();
        run.forEach(turned::add);
        Collections.reverse(turned);
        run.removeAll();
        run.addAll(turned);
        StretchNumbers.change(tree, at -> members.size() - 1 - at);
        return tree.read();
    }
}
