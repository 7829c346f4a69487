package turnalike.pieces;

import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.TreeScanner;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import turnalike.ParsedSources;

/** The words of the questions as the sources have them: all that is handed to a slip, and to what words a part of one. */
final class SlipTexts extends TreeScanner<Void, Boolean> {
    private static final Set<String> MAKERS = Set.of("Slip", "LikelyCorrection", "Unit", "nearest");

    /** The methods whose answer is a question. */
    private static final Set<String> ASKERS = Set.of("question");

    private static final Pattern ASKING = Pattern.compile("\\b(Slip|LikelyCorrection|LengthsOfPieces)\\b");

    private final Map<String, List<String>> variables = new HashMap<>();
    private final List<String> found = new ArrayList<>();

    /** {@return what stands between the figures, each with the file that says it} */
    static Map<String, String> inSources() throws IOException {
        Map<String, String> out = new TreeMap<>();
        ParsedSources.each((file, text) -> ASKING.matcher(text).find(), (file, unit) -> {
            SlipTexts words = new SlipTexts();
            words.scan(unit, false);
            words.found.stream()
                    .flatMap(each -> Arrays.stream(each.split("%(\\d\\$)?[-+,0-9.]*[sdf]")))
                    .map(String::strip)
                    .filter(each -> each.matches(".*\\p{L}.*"))
                    .forEach(each -> out.putIfAbsent(each, file.getFileName().toString()));
        });
        return out;
    }

    @Override
    public Void visitNewClass(NewClassTree call, Boolean asked) {
        return super.visitNewClass(
                call, asked || MAKERS.contains(call.getIdentifier().toString()));
    }

    @Override
    public Void visitMethodInvocation(MethodInvocationTree call, Boolean asked) {
        return super.visitMethodInvocation(
                call, asked || MAKERS.contains(call.getMethodSelect().toString()));
    }

    @Override
    public Void visitMethod(MethodTree method, Boolean asked) {
        boolean asks = ASKERS.contains(method.getName().toString())
                && method.getReturnType() != null
                && method.getReturnType().toString().contains("String");
        return super.visitMethod(method, asked || asks);
    }

    /** A variable's words count where it is handed on. */
    @Override
    public Void visitVariable(VariableTree variable, Boolean asked) {
        if (variable.getInitializer() != null) {
            variables.put(variable.getName().toString(), literals(variable.getInitializer()));
        }
        return super.visitVariable(variable, asked);
    }

    @Override
    public Void visitIdentifier(IdentifierTree name, Boolean asked) {
        if (asked) {
            found.addAll(variables.getOrDefault(name.getName().toString(), List.of()));
        }
        return super.visitIdentifier(name, asked);
    }

    @Override
    public Void visitLiteral(LiteralTree literal, Boolean asked) {
        if (asked && literal.getValue() instanceof String text) {
            found.add(text);
        }
        return super.visitLiteral(literal, asked);
    }

    private static List<String> literals(Tree tree) {
        List<String> out = new ArrayList<>();
        new TreeScanner<Void, List<String>>() {
            @Override
            public Void visitLiteral(LiteralTree literal, List<String> into) {
                if (literal.getValue() instanceof String text) {
                    into.add(text);
                }
                return super.visitLiteral(literal, into);
            }
        }.scan(tree, out);
        return out;
    }
}
