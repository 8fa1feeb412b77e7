package quoin.doclet;

import com.sun.source.util.DocTrees;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import javax.lang.model.element.Element;
import javax.lang.model.element.ElementKind;
import javax.lang.model.element.ModuleElement;
import javax.lang.model.element.PackageElement;
import javax.lang.model.element.TypeElement;
import javax.lang.model.util.ElementFilter;
import jdk.javadoc.doclet.DocletEnvironment;

/** Gathers what belongs into the catalogue from the exported packages: what computes, and what carries a tag. */
final class Gathering {
    private final DocTrees trees;
    private final List<Entry> entries = new ArrayList<>();

    private Gathering(DocTrees trees) {
        this.trees = trees;
    }

    static List<Entry> of(DocletEnvironment environment) {
        Gathering gathering = new Gathering(environment.getDocTrees());
        types(environment).forEach(gathering::visit);
        return List.copyOf(gathering.entries);
    }

    /** The outermost types of the exported packages, by name. */
    static List<TypeElement> types(DocletEnvironment environment) {
        Set<TypeElement> found = new LinkedHashSet<>();
        for (Element element : environment.getIncludedElements()) {
            if (element instanceof PackageElement onePackage) {
                found.addAll(ElementFilter.typesIn(onePackage.getEnclosedElements()));
            } else if (element instanceof TypeElement type
                    && type.getEnclosingElement().getKind() == ElementKind.PACKAGE) {
                found.add(type);
            }
        }
        return found.stream()
                .filter(type -> isExported((PackageElement) type.getEnclosingElement()))
                .sorted(Comparator.comparing(type -> type.getQualifiedName().toString()))
                .toList();
    }

    private static boolean isExported(PackageElement onePackage) {
        ModuleElement module = (ModuleElement) onePackage.getEnclosingElement();
        return module == null
                || module.isUnnamed()
                || ElementFilter.exportsIn(module.getDirectives()).stream()
                        .anyMatch(exports -> exports.getTargetModules() == null
                                && exports.getPackage().equals(onePackage));
    }

    private void visit(Element element) {
        Comment comment = Comment.of(element, trees);
        if (comment.hasAny() || Computing.is(element)) {
            entries.add(new Entry(element, Signature.of(element), comment));
        }
        element.getEnclosedElements().stream()
                .filter(member -> member.getKind().isClass()
                        || member.getKind().isInterface()
                        || member.getKind() == ElementKind.METHOD
                        || member.getKind() == ElementKind.CONSTRUCTOR)
                .forEach(this::visit);
    }
}
