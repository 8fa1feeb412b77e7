package quoin.doclet;

import java.util.Set;
import javax.lang.model.element.Element;
import javax.lang.model.element.ElementKind;
import javax.lang.model.element.ExecutableElement;
import javax.lang.model.element.Modifier;
import javax.lang.model.type.DeclaredType;
import javax.lang.model.type.TypeKind;
import javax.lang.model.type.TypeMirror;

/**
 * Which methods are public functions that compute: public and static, in a public final class without public
 * constructors and without public instance methods, with a number or a finding as the answer.
 */
final class Computing {
    private static final Set<String> ANSWERS = Set.of("Uncertain", "Extreme", "Estimate", "Measured", "Finding");

    private Computing() {}

    static boolean is(Element element) {
        return element.getKind() == ElementKind.METHOD
                && has(element, Modifier.PUBLIC)
                && has(element, Modifier.STATIC)
                && isAnswer(((ExecutableElement) element).getReturnType())
                && isHolder(element.getEnclosingElement());
    }

    private static boolean isAnswer(TypeMirror type) {
        return type.getKind() == TypeKind.DOUBLE
                || (type.getKind() == TypeKind.DECLARED
                        && ANSWERS.contains(((DeclaredType) type)
                                .asElement()
                                .getSimpleName()
                                .toString()));
    }

    private static boolean isHolder(Element type) {
        return type.getKind() == ElementKind.CLASS
                && has(type, Modifier.FINAL)
                && isPublicAllTheWay(type)
                && type.getEnclosedElements().stream().noneMatch(Computing::isOfAValue);
    }

    /** A public constructor or a public instance method: then the class is a value, no holder of functions. */
    private static boolean isOfAValue(Element member) {
        return has(member, Modifier.PUBLIC)
                && (member.getKind() == ElementKind.CONSTRUCTOR
                        || (member.getKind() == ElementKind.METHOD && !has(member, Modifier.STATIC)));
    }

    private static boolean isPublicAllTheWay(Element type) {
        Element outer = type.getEnclosingElement();
        return has(type, Modifier.PUBLIC) && (outer.getKind() == ElementKind.PACKAGE || isPublicAllTheWay(outer));
    }

    private static boolean has(Element element, Modifier modifier) {
        return element.getModifiers().contains(modifier);
    }
}
