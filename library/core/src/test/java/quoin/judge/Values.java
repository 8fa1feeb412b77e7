package quoin.judge;

import java.util.ArrayList;
import java.util.List;
import quoin.measure.Extreme;
import quoin.measure.Influence;
import quoin.measure.Influences;
import quoin.measure.Uncertain;

/** Estimates for tests. */
final class Values {
    private Values() {}

    /** A value with one normal influence of its own. */
    static Uncertain value(double value, double u) {
        return Uncertain.of(value, Influence.normal("only", u));
    }

    /** A value with one normal influence of that name. */
    static Uncertain value(double value, double u, String name) {
        return Uncertain.of(value, Influence.normal(name, u));
    }

    /** Standard influences z1, z2, … */
    static Influences basis(int size) {
        List<Influence> all = new ArrayList<>();
        for (int i = 1; i <= size; i++) {
            all.add(Influence.normal("z" + i, 1));
        }
        return Influences.of(all);
    }

    static Uncertain row(double value, double... contributions) {
        return Uncertain.ofContributions(value, basis(contributions.length), contributions);
    }

    static List<Extreme.Part> parts(Uncertain... values) {
        List<Extreme.Part> parts = new ArrayList<>();
        for (Uncertain value : values) {
            parts.add(new Extreme.Part(List.of("part" + (parts.size() + 1)), value));
        }
        return parts;
    }

    static Extreme least(Uncertain... values) {
        return Extreme.least(parts(values));
    }

    static Extreme greatest(Uncertain... values) {
        return Extreme.greatest(parts(values));
    }

    static Extreme largestInSize(Uncertain... values) {
        return Extreme.largestInSize(parts(values));
    }
}
