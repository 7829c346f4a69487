package turnalike;

import com.sun.source.doctree.DocCommentTree;
import com.sun.source.doctree.DocTree;
import com.sun.source.doctree.ParamTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.TypeParameterTree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** Finds the components of public records, and the type parameters of public types, whose documentation has no {@code @param} for them. */
final class ParamTags extends TreePathScanner<Void, CompilationUnitTree> {
    private final DocTrees docs;
    private final List<String> missing = new ArrayList<>();

    private ParamTags(DocTrees docs) {
        this.docs = docs;
    }

    /** Each as {@code FILE:LINE name}, in the order of the sources; the sources are parsed only. */
    static List<String> missing(List<JavaFileObject> sources) throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, Locale.ROOT, null)) {
            JavacTask task = (JavacTask) compiler.getTask(null, manager, null, List.of(), null, sources);
            ParamTags tags = new ParamTags(DocTrees.instance(task));
            for (CompilationUnitTree unit : task.parse()) {
                tags.scan(unit, unit);
            }
            return tags.missing;
        }
    }

    @Override
    public Void visitClass(ClassTree type, CompilationUnitTree unit) {
        if (!isPublic(type)) {
            return null;
        }
        Set<String> said = said();
        for (TypeParameterTree each : type.getTypeParameters()) {
            require("<" + each.getName() + ">", said, type, unit);
        }
        if (type.getKind() == Tree.Kind.RECORD) {
            for (Tree each : type.getMembers()) {
                // A record has no fields of its own but its components.
                if (each instanceof VariableTree field
                        && !field.getModifiers().getFlags().contains(Modifier.STATIC)) {
                    require(field.getName().toString(), said, type, unit);
                }
            }
        }
        return super.visitClass(type, unit);
    }

    private void require(String name, Set<String> said, ClassTree type, CompilationUnitTree unit) {
        if (!said.contains(name)) {
            long at = docs.getSourcePositions().getStartPosition(unit, type);
            missing.add("%s:%d %s"
                    .formatted(unit.getSourceFile().getName(), unit.getLineMap().getLineNumber(at), name));
        }
    }

    private Set<String> said() {
        Set<String> said = new HashSet<>();
        DocCommentTree doc = docs.getDocCommentTree(getCurrentPath());
        if (doc != null) {
            for (DocTree each : doc.getBlockTags()) {
                if (each instanceof ParamTree param) {
                    said.add(param.isTypeParameter() ? "<" + param.getName() + ">" : "" + param.getName());
                }
            }
        }
        return said;
    }

    private boolean isPublic(ClassTree type) {
        boolean inInterface = getCurrentPath().getParentPath().getLeaf().getKind() == Tree.Kind.INTERFACE;
        Set<Modifier> flags = type.getModifiers().getFlags();
        return flags.contains(Modifier.PUBLIC) || (inInterface && !flags.contains(Modifier.PRIVATE));
    }
}
