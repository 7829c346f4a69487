package turnalike.web;

import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.ConditionalExpressionTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.ParenthesizedTree;
import com.sun.source.util.TreeScanner;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import turnalike.ParsedSources;

/**
 * What the program may say of bad input, read off its own sources: the texts handed to {@code new Problem(where, what, mend)}, to the page's
 * refusals, to those of photographs and to the methods that make them, each with a name in the place of what is only known when it runs.
 */
final class ProblemTexts {
    private static final Set<String> MAKERS = Set.of("Problem", "Refusal", "Unsure", "problem", "wrong", "refused");

    private static final String REFUSED = "Refusal.of";

    /** A spoilt picture, and what to know of a trace; a spoilt store's ways stay as they are. */
    private static final Set<String> OF_PICTURES = Set.of("PictureFile.damaged", "damaged", "warnings.add");

    private static final Path PICTURES =
            Path.of("src", "main", "java", "turnalike", "photo").toAbsolutePath();

    /** Stands for what is only known when it runs. */
    static final String NAME = "bead";

    private ProblemTexts() {}

    /** {@return each text with the file that says it} */
    static Map<String, String> inSources() throws IOException {
        Map<String, String> out = new TreeMap<>();
        ParsedSources.each(
                (file, text) -> text.contains(REFUSED)
                        || file.startsWith(PICTURES)
                        || MAKERS.stream().anyMatch(maker -> text.contains(maker + "(")),
                (file, unit) -> {
                    String name = file.getFileName().toString();
                    new Calls(text -> out.putIfAbsent(text, name), file.startsWith(PICTURES)).scan(unit, name);
                });
        return out;
    }

    private static final class Calls extends TreeScanner<Void, String> {
        private final java.util.function.Consumer<String> into;
        private final boolean ofPictures;

        Calls(java.util.function.Consumer<String> into, boolean ofPictures) {
            this.into = into;
            this.ofPictures = ofPictures;
        }

        @Override
        public Void visitNewClass(NewClassTree call, String file) {
            if (MAKERS.contains(call.getIdentifier().toString())) {
                told(call.getArguments());
            }
            return super.visitNewClass(call, file);
        }

        @Override
        public Void visitMethodInvocation(MethodInvocationTree call, String file) {
            String whole = call.getMethodSelect().toString();
            String name = whole.substring(whole.lastIndexOf('.') + 1);
            if (MAKERS.contains(name) || whole.equals(REFUSED) || (ofPictures && OF_PICTURES.contains(whole))) {
                told(call.getArguments());
            }
            return super.visitMethodInvocation(call, file);
        }

        /** What and mend are the last two; what stands where is a place in somebody's file. */
        private void told(List<? extends ExpressionTree> arguments) {
            for (ExpressionTree each : arguments.subList(Math.max(0, arguments.size() - 2), arguments.size())) {
                texts(each).forEach(into);
            }
        }
    }

    /** Every text that the expression may come to. */
    private static List<String> texts(ExpressionTree tree) {
        if (tree instanceof LiteralTree literal && literal.getValue() instanceof String text) {
            return List.of(text);
        }
        if (tree instanceof ParenthesizedTree inner) {
            return texts(inner.getExpression());
        }
        if (tree instanceof ConditionalExpressionTree choice) {
            List<String> out = new ArrayList<>(texts(choice.getTrueExpression()));
            out.addAll(texts(choice.getFalseExpression()));
            return out;
        }
        if (tree instanceof BinaryTree sum) {
            List<String> out = new ArrayList<>();
            for (String left : texts(sum.getLeftOperand())) {
                texts(sum.getRightOperand()).forEach(right -> out.add(left + right));
            }
            return out;
        }
        if (tree instanceof MethodInvocationTree call
                && call.getMethodSelect() instanceof MemberSelectTree select
                && select.getIdentifier().contentEquals("formatted")) {
            return texts(select.getExpression()).stream()
                    .map(ProblemTexts::filled)
                    .toList();
        }
        if (tree instanceof MethodInvocationTree call
                && call.getMethodSelect().toString().equals("String.format")) {
            return call.getArguments().stream()
                    .filter(each -> each instanceof LiteralTree || each instanceof BinaryTree)
                    .findFirst()
                    .map(form -> texts(form).stream().map(ProblemTexts::filled).toList())
                    .orElse(List.of(NAME));
        }
        return List.of(NAME);
    }

    private static String filled(String form) {
        return form.replaceAll("%(\\d\\$)?[-+,0-9.]*s", NAME)
                .replaceAll("%(\\d\\$)?[-+,0-9.]*[dfge]", "3")
                .replace("%%", "%");
    }
}
