package quoin.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import quoin.judge.Catalogue;
import quoin.judge.Finding;
import quoin.judge.ReadingDoubt;
import quoin.judge.Reason;
import quoin.judge.Retake;
import quoin.judge.Retakes;
import quoin.judge.Verdict;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.measure.EquallyLikely;
import quoin.measure.Instrument;
import quoin.opening.Further;
import quoin.opening.Opening;
import quoin.opening.Reading;
import quoin.opening.Span;
import quoin.parts.Parts;
import quoin.rulebook.BoundClause;
import quoin.rulebook.Rulebook;

/**
 * How likely further readings settle what is undecided: equally likely values of readings not taken yet are added to the
 * survey, and the whole line is run again with each, sizes decided anew. The share of runs in which a finding is no
 * longer undecided is the probability that the reading settles it. Values are drawn from the adjusted values and the stated
 * doubts; what the misfit of the readings taken so far says of a shared error is not used.
 *
 * <p>A reading that would then disagree with the others settles nothing. Resolution: see {@link #RUNS}. Not safe for use
 * by many threads.
 */
final class Prospects {
    /**
     * Runs for each candidate. The share is a multiple of 1/16; one reading is good to 1/32 for each edge between
     * settled and not, several readings to about 0.1.
     */
    static final int RUNS = 16;

    /** Candidates by other instruments that are looked into for one finding, at most. */
    private static final int MOST = 3;

    /** Where nothing settles it likelier than this, more readings together are looked into. */
    private static final double LIKELY = 0.5;

    private static final int FEW_TOGETHER = 3;

    /** More readings than this at once are a survey of its own. */
    private static final int MOST_TOGETHER = 8;

    private final Job job;
    private final Rulebook rulebook;
    private final Parts parts;
    private final Catalogue catalogue;
    private final Opening opening;
    private final BoundChecks bounds;
    private final Map<Retake, List<BoundChecks>> seen = new LinkedHashMap<>();

    Prospects(Job job, Rulebook rulebook, Parts parts, Catalogue catalogue, Opening opening, BoundChecks bounds) {
        this.job = job;
        this.rulebook = rulebook;
        this.parts = parts;
        this.catalogue = catalogue;
        this.opening = opening;
        this.bounds = bounds;
    }

    /**
     * The findings of the bounds, the undecided ones with what may settle them. While a needed reading is still missing that
     * one comes first, and nothing is asked for again.
     */
    List<Finding> findings(List<String> missing) {
        List<Finding> findings = bounds.findings();
        if (missing.stream().anyMatch(need -> need.indexOf('@') > 0)) {
            return findings;
        }
        List<Finding> result = new ArrayList<>();
        for (int i = 0; i < findings.size(); i++) {
            Finding finding = findings.get(i);
            boolean open = finding.reason().filter(Prospects::isOfDoubt).isPresent();
            result.add(open ? finding.withRetakes(retakes(rulebook.bounds().get(i))) : finding);
        }
        return result;
    }

    private static boolean isOfDoubt(Reason reason) {
        return reason == Reason.DOUBT || reason == Reason.TOO_NARROW || reason == Reason.NUMERICAL;
    }

    private List<Retake> retakes(BoundClause clause) {
        List<ReadingDoubt> readable = readable();
        List<String> places = bounds.byShare(clause, readable);
        List<Retake> first = bounds.candidates(clause, readable);
        List<Retake> own = new ArrayList<>();
        List<Retake> anew = new ArrayList<>();
        for (Retake retake : first) {
            (retake.by().isEmpty() ? anew : own).add(retake);
        }
        List<Retake> candidates = new ArrayList<>(own);
        candidates.addAll(byOthers(first));
        List<Retake> settled = new ArrayList<>(settled(clause, candidates));
        together(clause, places, settled);
        List<Retake> ranked = Retakes.ranked(settled);
        if (ranked.stream().anyMatch(Retake::isWorthTaking) || anew.isEmpty()) {
            return ranked;
        }
        List<Retake> all = new ArrayList<>(ranked);
        all.addAll(settled(clause, anew));
        List<String> most = places.subList(0, Math.min(MOST_TOGETHER, places.size()));
        for (Retake retake : anew) {
            all.addAll(settled(clause, List.of(new Retake(most, "", 1, retake.u(), Double.NaN))));
        }
        return Retakes.ranked(all);
    }

    /** Three, then eight readings together, those with the largest share in the doubt. */
    private void together(BoundClause clause, List<String> places, List<Retake> settled) {
        for (int count : new int[] {FEW_TOGETHER, MOST_TOGETHER}) {
            if (places.isEmpty() || settled.stream().anyMatch(retake -> retake.settles() >= LIKELY)) {
                return;
            }
            List<String> some = places.subList(0, Math.min(count, places.size()));
            List<Retake> more = new ArrayList<>();
            for (Instrument by : instruments()) {
                if (by.hasDoubt()
                        && some.stream()
                                .allMatch(place -> canRead(reading(place).of(), by))) {
                    more.add(new Retake(some, by.id(), 1, Double.NaN, Double.NaN));
                }
            }
            settled.addAll(settled(clause, more));
        }
    }

    private List<ReadingDoubt> readable() {
        Set<String> barred = new LinkedHashSet<>();
        job.opening().cannot().forEach(cannot -> barred.add(cannot.of().text()));
        List<ReadingDoubt> readable = new ArrayList<>();
        List<ReadingDoubt> all = opening.survey().readingDoubts();
        for (int i = 0; i < all.size(); i++) {
            if (!barred.contains(opening.survey().readings().get(i).of().text())) {
                readable.add(all.get(i));
            }
        }
        return readable;
    }

    /** The same readings by each other instrument of the job; of many readings also the first one, two and four. */
    private List<Retake> byOthers(List<Retake> first) {
        Set<Retake> others = new LinkedHashSet<>();
        for (Retake retake : first) {
            for (int count = 1; count < 2 * retake.readings().size(); count *= 2) {
                List<String> places = retake.readings()
                        .subList(0, Math.min(count, retake.readings().size()));
                for (Instrument by : instruments()) {
                    if (others.size() < MOST && places.stream().allMatch(place -> isOther(place, by))) {
                        others.add(new Retake(places, by.id(), 1, retake.u(), Double.NaN));
                    }
                }
            }
        }
        return List.copyOf(others);
    }

    private Set<Instrument> instruments() {
        Set<Instrument> all = new LinkedHashSet<>(job.instrumentsByName());
        job.opening().readings().forEach(reading -> all.add(reading.by()));
        return all;
    }

    private boolean isOther(String place, Instrument by) {
        Reading reading = reading(place);
        return by.hasDoubt() && !reading.by().equals(by) && canRead(reading.of(), by);
    }

    /** A tape or a laser reads distances; anything else only what it was used for. */
    private boolean canRead(Span span, Instrument by) {
        boolean distance = span instanceof Span.Edge
                || span instanceof Span.Across
                || span instanceof Span.Diagonal
                || span instanceof Span.Cross
                || span instanceof Span.Check;
        return (distance && by.kind() != Instrument.Kind.STATED)
                || job.opening().readings().stream()
                        .anyMatch(reading -> reading.by().equals(by)
                                && reading.of().getClass().equals(span.getClass()));
    }

    private Reading reading(String place) {
        return job.opening().readings().stream()
                .filter(reading -> reading.name().equals(place))
                .findFirst()
                .orElseThrow();
    }

    private List<Retake> settled(BoundClause clause, List<Retake> retakes) {
        return retakes.stream()
                .map(retake -> retake.withSettles(settles(clause, retake)))
                .toList();
    }

    /** The probability that those readings settle that bound; NaN where it is not known by what they are taken. */
    double settles(BoundClause clause, Retake retake) {
        List<BoundChecks> runs = seen.computeIfAbsent(retake.withSettles(Double.NaN), this::runs);
        double count = 0;
        for (BoundChecks run : runs) {
            count += run.verdict(clause) == Verdict.UNDECIDED ? 0 : 1;
        }
        return runs.isEmpty() ? Double.NaN : count / runs.size();
    }

    private List<BoundChecks> runs(Retake retake) {
        Optional<Instrument> by = instrument(retake);
        if (by.isEmpty()) {
            return List.of();
        }
        Further further = Further.of(opening, retake.readings(), by.get(), retake.times());
        List<BoundChecks> runs = new ArrayList<>();
        for (double[] values : EquallyLikely.values(further.expected(), RUNS)) {
            Line line = new Line(job, rulebook, parts, catalogue, Surveyed.of(job, rulebook, further.survey(values)));
            runs.add(new BoundChecks(job, rulebook, line.opening(), line.boundable(), catalogue));
        }
        return runs;
    }

    /** The one named; else one that shares no error with any and is as good as asked. */
    private Optional<Instrument> instrument(Retake retake) {
        if (!retake.by().isEmpty()) {
            return instruments().stream()
                    .filter(instrument -> instrument.id().equals(retake.by()))
                    .findFirst();
        }
        if (!(retake.u() > 0)) {
            return Optional.empty();
        }
        Dimension dimension = reading(retake.readings().get(0)).of().dimension();
        return Optional.of(Instrument.of("another-instrument", Instrument.Kind.STATED)
                .withEach(List.of(Doubt.standard(retake.u(), dimension))));
    }
}
