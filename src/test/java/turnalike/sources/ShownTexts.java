package turnalike.sources;

import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.TreeScanner;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import turnalike.units.Working;
import turnalike.wood.Equation;

/**
 * The texts that one file of main may show: for each {@link Working} made there its figure's name and its source, put together from what
 * the file says, and every other text in quotes. A source that cannot be put together comes out as {@link #UNREADABLE}, which no row names.
 */
@SuppressWarnings("VoidUsed") // javac's scanners hand on a Void
final class ShownTexts extends TreeScanner<@Nullable Void, @Nullable Void> {
    static final String UNREADABLE = "a source that is not written out in its file";

    private final String place;
    private final String feature;
    private final List<Mention> out;
    private final Map<String, Tree> variables = new HashMap<>();
    private final Map<String, Tree> methods = new HashMap<>();

    ShownTexts(CompilationUnitTree unit, String place, String feature, List<Mention> out) {
        this.place = place;
        this.feature = feature;
        this.out = out;
        new Declared().scan(unit, null);
    }

    @Override
    public @Nullable Void visitNewClass(NewClassTree made, @Nullable Void none) {
        if (made.getIdentifier().toString().equals("Working")) {
            Tree source = made.getArguments().get(2);
            if (!source.toString()
                    .endsWith(".source()")) { // handed on from another working, which is read where it is made
                String figure = written(made.getArguments().get(0));
                String small = figure.substring(0, 1).toLowerCase(Locale.ROOT) + figure.substring(1);
                String text = written(source);
                out.add(new Mention(place, feature, small + ": " + (text.isEmpty() ? UNREADABLE : text), true));
            }
            scan(made.getArguments().get(1), none);
            return scan(made.getArguments().get(3), none);
        }
        return super.visitNewClass(made, none);
    }

    @Override
    public @Nullable Void visitBinary(BinaryTree binary, @Nullable Void none) {
        if (binary.getKind() != Tree.Kind.PLUS) {
            return super.visitBinary(binary, none);
        }
        out.add(new Mention(place, feature, written(binary), false));
        return none;
    }

    @Override
    public @Nullable Void visitLiteral(LiteralTree literal, @Nullable Void none) {
        if (literal.getValue() instanceof String text) {
            out.add(new Mention(place, feature, text, false));
        }
        return none;
    }

    private String written(Tree tree) {
        StringBuilder text = new StringBuilder();
        new Written(text).scan(tree, null);
        return text.toString();
    }

    /** What the names of the file stand for. */
    private final class Declared extends TreeScanner<@Nullable Void, @Nullable Void> {
        @Override
        public @Nullable Void visitVariable(VariableTree variable, @Nullable Void none) {
            if (variable.getInitializer() != null) {
                variables.put(variable.getName().toString(), variable.getInitializer());
            }
            return super.visitVariable(variable, none);
        }

        @Override
        public @Nullable Void visitMethod(MethodTree method, @Nullable Void none) {
            if (method.getBody() != null) {
                methods.put(method.getName().toString(), method.getBody());
            }
            return super.visitMethod(method, none);
        }
    }

    /** All that is written in an expression, in its order, also where it stands behind a name of the file. */
    private final class Written extends TreeScanner<@Nullable Void, @Nullable Void> {
        private final StringBuilder text;
        private final Set<Tree> followed = new HashSet<>();

        Written(StringBuilder text) {
            this.text = text;
        }

        @Override
        public @Nullable Void visitLiteral(LiteralTree literal, @Nullable Void none) {
            if (literal.getValue() instanceof String string) {
                text.append(string);
            }
            return none;
        }

        @Override
        public @Nullable Void visitMemberSelect(MemberSelectTree select, @Nullable Void none) {
            switch (select.toString()) {
                case "Working.COMMON_PRACTICE" -> text.append(Working.COMMON_PRACTICE);
                case "Working.DERIVED" -> text.append(Working.DERIVED);
                default -> super.visitMemberSelect(select, none);
            }
            return none;
        }

        @Override
        public @Nullable Void visitIdentifier(IdentifierTree name, @Nullable Void none) {
            return once(variables.get(name.getName().toString()));
        }

        @Override
        public @Nullable Void visitMethodInvocation(MethodInvocationTree call, @Nullable Void none) {
            if (call.getMethodSelect() instanceof IdentifierTree own) {
                once(methods.get(own.getName().toString()));
            } else if (call.getMethodSelect() instanceof MemberSelectTree other
                    && other.getIdentifier().contentEquals("cite")
                    && call.getArguments().isEmpty()) {
                text.append(Equation.DENSITY.cite());
            } else {
                scan(call.getMethodSelect(), none);
            }
            return scan(call.getArguments(), none);
        }

        private @Nullable Void once(@Nullable Tree named) {
            return named != null && followed.add(named) ? scan(named, null) : null;
        }
    }
}
