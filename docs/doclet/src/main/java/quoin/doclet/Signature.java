package quoin.doclet;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import javax.lang.model.element.Element;
import javax.lang.model.element.ElementKind;
import javax.lang.model.element.ExecutableElement;
import javax.lang.model.element.TypeElement;
import javax.lang.model.element.VariableElement;
import javax.lang.model.type.ArrayType;
import javax.lang.model.type.DeclaredType;
import javax.lang.model.type.TypeMirror;
import javax.lang.model.type.TypeVariable;
import javax.lang.model.type.WildcardType;

/** Signatures written by hand, since what the tools print differs from one JDK to the next. */
final class Signature {
    private Signature() {}

    static String of(Element element) {
        if (element instanceof TypeElement type) {
            return type.getQualifiedName().toString();
        }
        if (element instanceof ExecutableElement method) {
            String owner = of(method.getEnclosingElement());
            String parameters = "(" + parameters(method) + ")";
            return method.getKind() == ElementKind.CONSTRUCTOR
                    ? owner + parameters
                    : owner + "." + method.getSimpleName() + parameters + " → " + type(method.getReturnType());
        }
        return of(element.getEnclosingElement()) + "." + element.getSimpleName();
    }

    private static String parameters(ExecutableElement method) {
        List<? extends VariableElement> all = method.getParameters();
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < all.size(); i++) {
            boolean rest = method.isVarArgs() && i == all.size() - 1;
            TypeMirror type = all.get(i).asType();
            out.append(i == 0 ? "" : ", ")
                    .append(rest ? type(((ArrayType) type).getComponentType()) + "..." : type(type))
                    .append(' ')
                    .append(all.get(i).getSimpleName());
        }
        return out.toString();
    }

    static String type(TypeMirror type) {
        return switch (type.getKind()) {
            case DECLARED -> declared((DeclaredType) type);
            case ARRAY -> type(((ArrayType) type).getComponentType()) + "[]";
            case TYPEVAR -> ((TypeVariable) type).asElement().getSimpleName().toString();
            case WILDCARD -> wildcard((WildcardType) type);
            default -> type.getKind().toString().toLowerCase(Locale.ROOT);
        };
    }

    private static String declared(DeclaredType type) {
        String name = type.asElement().getSimpleName().toString();
        return type.getTypeArguments().isEmpty()
                ? name
                : name
                        + type.getTypeArguments().stream()
                                .map(Signature::type)
                                .collect(Collectors.joining(", ", "<", ">"));
    }

    private static String wildcard(WildcardType type) {
        if (type.getExtendsBound() != null) {
            return "? extends " + type(type.getExtendsBound());
        }
        return type.getSuperBound() == null ? "?" : "? super " + type(type.getSuperBound());
    }
}
