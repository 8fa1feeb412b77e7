package quoin.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quoin.judge.Catalogue;
import quoin.judge.Verdict;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.opening.Reading;
import quoin.opening.Survey;
import quoin.parts.Parts;
import quoin.rulebook.BoundClause;
import quoin.rulebook.Rounding;
import quoin.rulebook.Rulebook;
import quoin.rulebook.SizeClause;
import quoin.rulebook.Sizes;

/**
 * The nearest change of one reading, and of one size of the order, that gives a bound another verdict.
 *
 * <p>Readings move by whole steps of their instrument (1 mm, 0.1&deg; where it states none), sizes by whole steps of their
 * rounding (1 mm where they have none), so many of them at most; everything else stays. Each candidate is run forward,
 * nearest first, until one flips: what is found is verified, and nothing nearer was passed over. A function of values, safe
 * for use by many threads; some hundred assessments of one bound each.
 */
public final class Flips {
    /** So many steps each way are tried. */
    public static final int STEPS = 30;

    private static final double TENTH_OF_A_DEGREE = Math.PI / 1800;
    private static final double DUST = 1e-9;

    private final Job job;
    private final Rulebook rulebook;
    private final Parts parts;
    private final Catalogue catalogue;
    private final BoundClause clause;
    private final Verdict was;
    private final Sizes sizes;
    private final Surveyed surveyed;

    /** A change before it is known what it does. */
    private record Candidate(Flip.Kind kind, int reading, String size, double from, double by, Dimension dimension) {}

    private Flips(Assessment assessment, BoundClause clause, Verdict was) {
        this.job = assessment.job();
        this.rulebook = assessment.rulebook();
        this.parts = assessment.parts();
        this.catalogue = assessment.catalogue();
        this.clause = clause;
        this.was = was;
        this.sizes = assessment.sizes();
        this.surveyed = Surveyed.of(job, rulebook);
    }

    /**
     * The nearest changes of a reading and of the order that give a bound another verdict.
     *
     * @param assessment the assessment
     * @param clause the bound's id
     * @return first the nearest changes of one reading (several where they are equally near), then the nearest of one size;
     *     none where nothing within {@link #STEPS} steps does it
     * @throws IllegalArgumentException if the rulebook has no such bound
     */
    public static List<Flip> nearest(Assessment assessment, String clause) {
        BoundClause bound = assessment.rulebook().bounds().stream()
                .filter(one -> one.id().equals(clause))
                .findFirst()
                .orElseThrow(
                        () -> new IllegalArgumentException("clause must be a bound of the rulebook, got " + clause));
        Verdict was = assessment.findings().stream()
                .filter(finding -> finding.clause().equals(clause))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("a bound must have a finding, got none for " + clause))
                .verdict();
        return new Flips(assessment, bound, was).nearest();
    }

    private List<Flip> nearest() {
        List<Flip> flips = new ArrayList<>(first(readings()));
        flips.addAll(first(orders()));
        return flips;
    }

    private List<Candidate> readings() {
        List<Candidate> all = new ArrayList<>();
        List<Reading> readings = job.opening().readings();
        for (int i = 0; i < readings.size(); i++) {
            Reading reading = readings.get(i);
            Dimension dimension = reading.of().dimension();
            double own = reading.by().step();
            double step = own > 0 ? own : dimension == Dimension.ANGLE ? TENTH_OF_A_DEGREE : 1;
            add(all, new Candidate(Flip.Kind.READING, i, "", reading.values().get(0), step, dimension));
        }
        return all;
    }

    private List<Candidate> orders() {
        List<Candidate> all = new ArrayList<>();
        for (SizeClause size : rulebook.sizes()) {
            double step =
                    size.round() instanceof Rounding.Step round ? round.amount().value() : 1;
            sizes.find(size.id())
                    .filter(decided -> decided.dimension() == Dimension.LENGTH)
                    .ifPresent(decided -> add(
                            all,
                            new Candidate(Flip.Kind.ORDER, -1, size.id(), decided.value(), step, decided.dimension())));
        }
        return all;
    }

    private static void add(List<Candidate> all, Candidate one) {
        for (int k = 1; k <= STEPS; k++) {
            for (int sign = -1; sign <= 1; sign += 2) {
                double by = sign * k * one.by();
                all.add(new Candidate(one.kind(), one.reading(), one.size(), one.from(), by, one.dimension()));
            }
        }
    }

    /** The nearest that flip, all that are equally near; angles count by the offset over a metre. */
    private List<Flip> first(List<Candidate> candidates) {
        List<Candidate> sorted = new ArrayList<>(candidates);
        sorted.sort(Comparator.comparingDouble(Flips::far));
        List<Flip> flips = new ArrayList<>();
        double found = Double.POSITIVE_INFINITY;
        for (Candidate candidate : sorted) {
            if (far(candidate) > found + DUST) {
                return flips;
            }
            Optional<Flip> flip = flip(candidate);
            if (flip.isPresent()) {
                found = far(candidate);
                flips.add(flip.get());
            }
        }
        return flips;
    }

    private static double far(Candidate candidate) {
        return Math.abs(candidate.by()) * (candidate.dimension() == Dimension.ANGLE ? 1000 : 1);
    }

    private Optional<Flip> flip(Candidate candidate) {
        if (!(candidate.from() + candidate.by() > 0) && candidate.kind() == Flip.Kind.ORDER) {
            return Optional.empty();
        }
        Verdict becomes = verdict(candidate);
        return becomes == was
                ? Optional.empty()
                : Optional.of(new Flip(
                        candidate.kind(),
                        candidate.kind() == Flip.Kind.ORDER
                                ? candidate.size()
                                : job.opening()
                                        .readings()
                                        .get(candidate.reading())
                                        .name(),
                        candidate.from(),
                        candidate.by(),
                        candidate.dimension(),
                        was,
                        becomes));
    }

    private Verdict verdict(Candidate candidate) {
        Line line = candidate.kind() == Flip.Kind.ORDER
                ? new Line(job, rulebook, parts, catalogue, surveyed, ordered(candidate))
                : new Line(job, rulebook, parts, catalogue, Surveyed.of(job, rulebook, read(candidate)));
        return new BoundChecks(job, rulebook, line.opening(), line.boundable(), catalogue)
                .settled(clause)
                .verdict();
    }

    private Map<String, Amount> ordered(Candidate candidate) {
        Map<String, Amount> ordered = new LinkedHashMap<>(job.ordered());
        ordered.put(candidate.size(), new Amount(candidate.from() + candidate.by(), candidate.dimension()));
        return ordered;
    }

    private Survey read(Candidate candidate) {
        List<Reading> readings = new ArrayList<>(job.opening().readings());
        readings.set(candidate.reading(), moved(readings.get(candidate.reading()), candidate.by()));
        return new Survey(
                readings, job.opening().straightWithinMm(), job.opening().finish());
    }

    private static Reading moved(Reading reading, double by) {
        List<Double> values = reading.values().stream().map(value -> value + by).toList();
        return new Reading(reading.id(), reading.of(), reading.in(), values, reading.by());
    }
}
