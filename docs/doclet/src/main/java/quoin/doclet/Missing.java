package quoin.doclet;

import com.sun.source.doctree.DocCommentTree;
import com.sun.source.doctree.DocTree;
import com.sun.source.doctree.ParamTree;
import com.sun.source.util.DocTrees;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import javax.lang.model.element.Element;
import javax.lang.model.element.ElementKind;
import javax.lang.model.element.ExecutableElement;
import javax.lang.model.element.Modifier;
import javax.lang.model.element.Parameterizable;
import javax.lang.model.element.TypeElement;
import javax.lang.model.type.TypeKind;
import javax.lang.model.util.Elements;

/**
 * Finds public and protected elements without a comment, and parameters and answers that a comment does not name.
 *
 * <p>The check of the JDK does the same, but in JDK 17 it wants the components of a record once more on its compact
 * constructor; this one takes them from the record.
 */
final class Missing {
    private final DocTrees trees;
    private final Elements elements;
    private final List<Fault> faults = new ArrayList<>();

    private Missing(DocTrees trees, Elements elements) {
        this.trees = trees;
        this.elements = elements;
    }

    static List<Fault> of(Iterable<TypeElement> types, DocTrees trees, Elements elements) {
        Missing missing = new Missing(trees, elements);
        types.forEach(missing::visit);
        return List.copyOf(missing.faults);
    }

    private void visit(Element element) {
        if (!isOpen(element) || isWrittenByCompiler(element) || isOverriding(element)) {
            return;
        }
        check(element);
        if (element instanceof TypeElement) {
            element.getEnclosedElements().forEach(this::visit);
        }
    }

    private void check(Element element) {
        DocCommentTree comment = trees.getDocCommentTree(element);
        if (comment == null || comment.getFullBody().isEmpty()) {
            faults.add(new Fault(element, "the comment is missing", "/** What it is, in one sentence. */"));
            return;
        }
        Set<String> told = told(comment);
        for (String name : wanted(element)) {
            if (!told.contains(name)) {
                faults.add(new Fault(element, "@param " + name + " is missing", "@param " + name + " what it is"));
            }
        }
        if (answers(element) && !tellsAnswer(comment)) {
            faults.add(new Fault(element, "@return is missing", "@return what comes out"));
        }
    }

    private static Set<String> told(DocCommentTree comment) {
        Set<String> told = new LinkedHashSet<>();
        for (DocTree tag : comment.getBlockTags()) {
            if (tag instanceof ParamTree param && !param.getDescription().isEmpty()) {
                told.add(param.getName().getName().toString());
            }
        }
        return told;
    }

    private static List<String> wanted(Element element) {
        Stream<? extends Element> named = Stream.of();
        if (element instanceof Parameterizable generic) {
            named = generic.getTypeParameters().stream();
        }
        if (element instanceof TypeElement type) {
            named = Stream.concat(named, type.getRecordComponents().stream());
        }
        if (element instanceof ExecutableElement method && !isCanonical(method)) {
            named = Stream.concat(named, method.getParameters().stream());
        }
        return named.map(one -> one.getSimpleName().toString()).toList();
    }

    private static boolean isCanonical(ExecutableElement method) {
        return method.getKind() == ElementKind.CONSTRUCTOR
                && method.getEnclosingElement() instanceof TypeElement type
                && type.getKind() == ElementKind.RECORD
                && types(type.getRecordComponents()).equals(types(method.getParameters()));
    }

    private static List<String> types(List<? extends Element> elements) {
        return elements.stream().map(one -> Signature.type(one.asType())).toList();
    }

    private static boolean answers(Element element) {
        return element instanceof ExecutableElement method
                && method.getKind() == ElementKind.METHOD
                && method.getReturnType().getKind() != TypeKind.VOID;
    }

    private static boolean tellsAnswer(DocCommentTree comment) {
        return Stream.concat(comment.getBlockTags().stream(), comment.getFullBody().stream())
                .anyMatch(tree -> tree.getKind() == DocTree.Kind.RETURN);
    }

    private static boolean isOpen(Element element) {
        return element.getModifiers().contains(Modifier.PUBLIC)
                || element.getModifiers().contains(Modifier.PROTECTED);
    }

    /** Members that stand in no source: a default constructor, the methods of an enum, the accessors of a record. */
    private boolean isWrittenByCompiler(Element element) {
        boolean accessor = element instanceof ExecutableElement method
                && element.getEnclosingElement() instanceof TypeElement type
                && type.getRecordComponents().stream().anyMatch(component -> method.equals(component.getAccessor()));
        return accessor
                || element.getKind() == ElementKind.RECORD_COMPONENT
                || trees.getPath(element) == null
                || elements.getOrigin(element) != Elements.Origin.EXPLICIT;
    }

    private static boolean isOverriding(Element element) {
        return element.getAnnotation(Override.class) != null;
    }
}
