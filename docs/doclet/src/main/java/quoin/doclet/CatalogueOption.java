package quoin.doclet;

import java.util.List;
import jdk.javadoc.doclet.Doclet;

/** One option of the doclet; keeps the last value given. */
final class CatalogueOption implements Doclet.Option {
    private final String name;
    private final int count;
    private final String description;
    private String value = "";

    CatalogueOption(String name, int count, String description) {
        this.name = name;
        this.count = count;
        this.description = description;
    }

    /** The value, or the empty text if the option was not given. */
    String value() {
        return value;
    }

    @Override
    public int getArgumentCount() {
        return count;
    }

    @Override
    public String getDescription() {
        return description;
    }

    @Override
    public Kind getKind() {
        return Kind.STANDARD;
    }

    @Override
    public List<String> getNames() {
        return List.of(name);
    }

    @Override
    public String getParameters() {
        return count == 0 ? "" : "FILE";
    }

    @Override
    public boolean process(String option, List<String> arguments) {
        if (count > 0) {
            value = arguments.get(0);
        }
        return true;
    }
}
