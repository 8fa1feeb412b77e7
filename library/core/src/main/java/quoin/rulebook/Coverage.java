package quoin.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import quoin.judge.Args;
import quoin.judge.Problem;
import quoin.measure.Amount;
import quoin.measure.Dimension;

/**
 * Which clauses, bands and choices of a rulebook have been touched by jobs so far, and which by none.
 *
 * <p>A size clause is touched by a job in which its size is decided, a bound by one in which its figure is determined, a band by
 * one whose figure is in it, an amount by choice by one that chose that part. Immutable and safe for use by many threads;
 * {@code plus} gives what one more job makes of it.
 */
public final class Coverage {
    private final Rulebook rulebook;
    private final Set<String> touched;

    private Coverage(Rulebook rulebook, Set<String> touched) {
        this.rulebook = rulebook;
        this.touched = touched;
    }

    /**
     * Nothing touched so far.
     *
     * @param rulebook the rulebook
     * @return the coverage
     */
    public static Coverage of(Rulebook rulebook) {
        return new Coverage(rulebook, Set.of());
    }

    /**
     * What one more job makes of it.
     *
     * @param figures the figures of the job, its sizes among them
     * @param choices the chosen part by kind
     * @return the changed copy
     */
    public Coverage plus(FigureSource figures, Map<String, String> choices) {
        Set<String> more = new TreeSet<>(touched);
        for (Place place : places()) {
            if (place.isTouched(figures, choices)) {
                more.add(place.pointer());
            }
        }
        return new Coverage(rulebook, more);
    }

    /** {@return how many clauses, bands and choices there are} */
    public int size() {
        return places().size();
    }

    /**
     * What no job touched: {@code clause-untouched}, {@code band-untouched}, {@code choice-untouched}, each at its place in the
     * document.
     *
     * @return one warning each, in the order of the document; those of a clause that is itself untouched are left out
     */
    public List<Problem> untouched() {
        List<Problem> problems = new ArrayList<>();
        String clause = "";
        for (Place place : places()) {
            boolean within = !clause.isEmpty() && place.pointer().startsWith(clause + "/");
            if (!touched.contains(place.pointer()) && !within) {
                problems.add(place.problem());
                clause = place instanceof Place.OfClause ? place.pointer() : clause;
            }
        }
        return problems;
    }

    /** A place of a rulebook that a job may touch; the bands of a named table once for each clause that enters it. */
    private sealed interface Place {
        record OfClause(String pointer, String clause, String figure) implements Place {
            @Override
            public boolean isTouched(FigureSource figures, Map<String, String> choices) {
                return figures.estimate(figure).isPresent();
            }

            @Override
            public Problem problem() {
                return Problem.warning("clause-untouched", pointer, Args.of("clause", clause));
            }
        }

        record OfBand(String pointer, String said, String clause, String by, double above, Amount upTo)
                implements Place {
            @Override
            public boolean isTouched(FigureSource figures, Map<String, String> choices) {
                return figures.estimate(by)
                        .filter(estimate -> Picking.isUpTo(estimate.value(), upTo.value())
                                && estimate.value() > 0
                                && !Picking.isUpTo(estimate.value(), above))
                        .isPresent();
            }

            @Override
            public Problem problem() {
                Dimension dimension = upTo.dimension();
                Args args = Args.of("clause", clause)
                        .with("by", by)
                        .with("above", dimension.toAnswer(above))
                        .with("upTo", upTo.toAnswer())
                        .with("unit", dimension.answerUnit());
                return Problem.warning("band-untouched", said, args);
            }
        }

        record OfChoice(String pointer, String clause, String choice, String part) implements Place {
            @Override
            public boolean isTouched(FigureSource figures, Map<String, String> choices) {
                return part.equals(choices.get(choice));
            }

            @Override
            public Problem problem() {
                Args args = Args.of("clause", clause).with("choice", choice).with("part", part);
                return Problem.warning("choice-untouched", pointer, args);
            }
        }

        String pointer();

        boolean isTouched(FigureSource figures, Map<String, String> choices);

        Problem problem();
    }

    private List<Place> places() {
        List<Place> places = new ArrayList<>();
        for (int i = 0; i < rulebook.sizes().size(); i++) {
            size(rulebook.sizes().get(i), "/sizes/" + i, places);
        }
        for (int i = 0; i < rulebook.bounds().size(); i++) {
            bound(rulebook.bounds().get(i), "/bounds/" + i, places);
        }
        return places;
    }

    private static void size(SizeClause clause, String at, List<Place> places) {
        places.add(new Place.OfClause(at, clause.id(), clause.id()));
        if (clause.of() instanceof Base.OfQuota of) {
            quota(of.quota(), clause.id(), at + "/of", places);
        }
        items(clause.less(), clause.id(), at + "/less/", places);
        items(clause.more(), clause.id(), at + "/more/", places);
    }

    private static void items(List<Item> items, String clause, String at, List<Place> places) {
        for (int i = 0; i < items.size(); i++) {
            quota(items.get(i).quota(), clause, at + i, places);
        }
    }

    private static void bound(BoundClause clause, String at, List<Place> places) {
        places.add(new Place.OfClause(at, clause.id(), clause.figure()));
        clause.atLeast().forEach(quota -> quota(quota, clause.id(), at + "/atLeast", places));
        clause.atMost().forEach(quota -> quota(quota, clause.id(), at + "/atMost", places));
        clause.within().forEach(quota -> quota(quota, clause.id(), at + "/within", places));
    }

    private static void quota(Quota quota, String clause, String at, List<Place> places) {
        if (quota instanceof Quota.Banded banded) {
            double above = 0;
            for (int i = 0; i < banded.bands().size(); i++) {
                Amount upTo = banded.bands().get(i).upTo();
                String pointer = at + "/bands/amounts/" + i;
                String said = banded.table().isEmpty() ? pointer : at + "/table";
                places.add(new Place.OfBand(pointer, said, clause, banded.by(), above, upTo));
                above = upTo.value();
            }
        } else if (quota instanceof Quota.ByChoice by) {
            by.amounts()
                    .keySet()
                    .forEach(part -> places.add(
                            new Place.OfChoice(at + "/amounts" + Report.step(part), clause, by.choice(), part)));
        }
    }
}
