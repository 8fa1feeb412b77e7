package quoin.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import quoin.judge.Args;
import quoin.judge.Finding;
import quoin.judge.Retake;
import quoin.judge.Step;
import quoin.measure.Instrument;
import quoin.opening.AdjustedReading;
import quoin.opening.Adjustment;
import quoin.opening.Cannot;
import quoin.opening.Opening;
import quoin.opening.Plane;
import quoin.opening.PlaneTest;
import quoin.opening.Reading;
import quoin.opening.Span;
import quoin.opening.Survey;
import quoin.opening.Suspect;

/**
 * What to read next: what is missing, in the order of a round; then what tells which reading is wrong, in front, behind, of
 * the depths; then what a finding asks for.
 */
final class NextReading {
    /** Two tests that differ by no more say the same. */
    private static final double ALIKE = 1e-6;

    private final Job job;
    private final Opening opening;
    private final Tools tools;
    private final List<Span> cannot;

    NextReading(Job job, Opening opening) {
        this.job = job;
        this.opening = opening;
        this.tools = new Tools(job);
        this.cannot = job.opening().cannot().stream().map(Cannot::of).toList();
    }

    Optional<Next> of(List<String> missing, List<Suspect> suspects, List<Finding> findings) {
        List<Adjustment.Bulge> bulges = opening.adjustment().bulges();
        return missing(missing)
                .or(() -> bulges.isEmpty() ? suspected(suspects) : string(bulges))
                .or(this::behind)
                .or(this::depths)
                .or(() -> retake(findings));
    }

    private Optional<Next> missing(List<String> missing) {
        return missing.stream()
                .flatMap(need -> SurveyCheck.place(need).stream())
                .filter(place -> !cannot.contains(place.of()))
                .findFirst()
                .map(place -> next(place, Step.of("missing", Args.of("what", place.text()))));
    }

    private Optional<Next> suspected(List<Suspect> suspects) {
        return suspects.stream().findFirst().map(suspect -> wouldTell(suspect, Plane.FRONT));
    }

    /** A string along a side that may not be as straight as stated, where that was not read twice. */
    private Optional<Next> string(List<Adjustment.Bulge> bulges) {
        for (Adjustment.Bulge bulge : bulges) {
            Survey.Place place =
                    new Survey.Place(Span.parse("bow@" + bulge.side().text() + ":" + bulge.at()));
            if (!cannot.contains(place.of()) && times(place) < 2) {
                return Optional.of(next(place, step(bulge, job.opening().straightWithinMm())));
            }
        }
        return Optional.empty();
    }

    static Step step(Adjustment.Bulge bulge, double withinMm) {
        return Step.of(
                "side-not-straight",
                Args.of("side", bulge.side().text())
                        .with("at", bulge.at())
                        .with("bow", bulge.mm())
                        .with("within", withinMm)
                        .with("unit", "mm"));
    }

    private Next wouldTell(Suspect suspect, Plane plane) {
        Survey.Place place = new Survey.Place(Span.parse(suspect.askFor()), plane);
        return next(place, Step.of("would-tell", Args.of("readings", suspect.readings())));
    }

    /** Behind: who is suspected there; or what its readings lack to have a place. */
    private Optional<Next> behind() {
        if (!opening.hasShape()) {
            return Optional.empty();
        }
        Adjustment back = Adjustment.of(opening.survey(), Plane.BACK);
        if (back.isSolved()) {
            return back.suspects(cannot).stream().findFirst().map(suspect -> wouldTell(suspect, Plane.BACK));
        }
        List<String> unused = opening.unusedBehind();
        Optional<Next> lacks = unused.isEmpty()
                ? Optional.empty()
                : back.missing().stream()
                        .filter(span -> !cannot.contains(span))
                        .findFirst()
                        .map(span -> next(
                                new Survey.Place(span, Plane.BACK),
                                Step.of("back-not-determined", Args.of("readings", unused))));
        return lacks.or(() -> again(Plane.BACK.text()));
    }

    private Optional<Next> depths() {
        return again("depth");
    }

    /**
     * Of a plane that does not agree, what fits worst, once more; of equals the one read least often. What was read twice and
     * still does not fit is no slip: then nothing is asked for.
     */
    private Optional<Next> again(String plane) {
        Optional<PlaneTest> test = opening.planes().stream()
                .filter(p -> p.plane().equals(plane) && !p.isAccepted())
                .findFirst();
        if (test.isEmpty()) {
            return Optional.empty();
        }
        List<AdjustedReading> checked = test.get().readings().stream()
                .filter(reading -> Double.isFinite(reading.w()))
                .toList();
        double most = checked.stream()
                .mapToDouble(reading -> Math.abs(reading.w()))
                .max()
                .orElse(0);
        List<Survey.Place> worst = new ArrayList<>();
        for (AdjustedReading reading : checked) {
            Survey.Place place =
                    opening.survey().readings().get(reading.entry()).place();
            boolean asWrong = Math.abs(reading.w()) >= most - ALIKE;
            if (asWrong && !worst.contains(place) && !cannot.contains(place.of()) && times(place) < 2) {
                worst.add(place);
            }
        }
        List<String> names =
                checked.stream().map(AdjustedReading::name).distinct().toList();
        return opening.survey().walk(worst).stream()
                .min(Comparator.comparingInt(this::times))
                .map(place -> next(place, Step.of("would-tell", Args.of("readings", names))));
    }

    private int times(Survey.Place place) {
        return opening.survey().readings().stream()
                .filter(reading -> reading.place().equals(place))
                .mapToInt(reading -> reading.values().size())
                .sum();
    }

    private Optional<Next> retake(List<Finding> findings) {
        for (Finding finding : findings) {
            for (Retake retake : finding.retakes()) {
                if (retake.isWorthTaking()) {
                    Survey.Place place = place(retake.readings().get(0));
                    Step because = Step.of("would-settle", Args.of("clause", finding.clause()));
                    return Optional.of(new Next(place.of().text(), place.in(), retake.by(), because));
                }
            }
        }
        return Optional.empty();
    }

    /** Of a reading by its name. */
    private Survey.Place place(String name) {
        return job.opening().readings().stream()
                .filter(reading -> reading.name().equals(name))
                .map(Reading::place)
                .findFirst()
                .orElseGet(() -> Survey.Place.parse(name));
    }

    private Next next(Survey.Place place, Step because) {
        String by = tools.forReading(place.of()).map(Instrument::id).orElse("");
        Optional<String> before = job.opening().readings().stream()
                .filter(reading -> reading.place().equals(place))
                .map(reading -> reading.by().id())
                .findFirst();
        return new Next(place.of().text(), place.in(), before.orElse(by), because);
    }

    /** Whether the readings can be right together, in every plane, and all of them could be used. */
    static boolean agrees(Opening opening) {
        Adjustment adjustment = opening.adjustment();
        boolean front = adjustment.state() == Adjustment.State.NOT_DETERMINED || adjustment.isAccepted();
        return front
                && opening.planes().stream().allMatch(PlaneTest::isAccepted)
                && opening.unusedBehind().isEmpty();
    }
}
