package quoin.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import quoin.judge.Catalogue;
import quoin.judge.Finding;
import quoin.judge.Retake;
import quoin.judge.Verdict;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.measure.Extreme;
import quoin.measure.Influence;
import quoin.measure.Instrument;
import quoin.measure.Uncertain;
import quoin.opening.Cannot;
import quoin.opening.Finish;
import quoin.opening.Further;
import quoin.opening.HeadTowards;
import quoin.opening.Reading;
import quoin.opening.Span;
import quoin.opening.Survey;
import quoin.parts.Parts;
import quoin.rulebook.BoundClause;
import quoin.rulebook.Quota;
import quoin.rulebook.Rulebook;

class ProspectsTest {
    private static final Instrument RULE =
            Instrument.of("rule", Instrument.Kind.STATED).withEach(List.of(Doubt.standard(0.4, Dimension.LENGTH)));
    private static final Instrument LASER = Instrument.of("laser", Instrument.Kind.LASER)
            .withEach(List.of(Doubt.standard(0.5, Dimension.LENGTH)))
            .withAll(List.of(Doubt.standard(0.3, Dimension.LENGTH)));
    /** Reads well, but its scale may be off: one error for all its readings, and all of them agree. */
    private static final Instrument BENT = Instrument.of("tape", Instrument.Kind.TAPE)
            .withEach(List.of(Doubt.standard(0.6, Dimension.LENGTH)))
            .withAll(List.of(Doubt.standard(1.5, Dimension.LENGTH).perLength()));

    private static Finding finding(Assessment assessment, String clause) {
        return assessment.findings().stream()
                .filter(f -> f.clause().equals(clause))
                .findFirst()
                .orElseThrow();
    }

    private static List<Reading> by(Instrument instrument) {
        List<Reading> readings = new ArrayList<>();
        for (Reading reading : Boathouse.readings()) {
            readings.add(new Reading("", reading.of(), reading.in(), reading.values(), instrument));
        }
        return readings;
    }

    private static Rulebook least(String figure, double mm) {
        return Boathouse.rules(BoundClause.of("enough", figure).withAtLeast(Quota.fixed(Boathouse.mm(mm))));
    }

    /**
     * One normal figure: a depth of 142.5, u 0.4, at least 142 at 95 %. A second reading leaves u' = 0.4/sqrt 2 and a new
     * estimate that is normal about 142.5 with the same spread, so it settles with P(d > 1.645 u') + P(d < -1.645 u').
     * Raiffa and Schlaifer 1961, pre-posterior analysis of a normal mean (handbook, from memory). 16 equally likely values: 1/32.
     */
    @Test
    void oneNormalFigureAsInTheTextbook() {
        List<Reading> readings = Boathouse.readings();
        readings.add(Reading.of("depth@head-left", RULE, 142.5));
        Job job = Boathouse.job(readings)
                .instruments(List.of(Boathouse.TAPE, RULE))
                .build();
        Finding finding = finding(Assessment.of(job, least("opening.depth.least", 142), Parts.NONE), "enough");
        Retake first = finding.retakes().get(0);
        assertThat(first.readings()).containsExactly("depth@head-left");
        assertThat(first.by()).isEqualTo("rule");
        assertThat(first.times()).isEqualTo(1);
        // 1.644854 u' = .465233; (.465233 - .5)/.282843 = -.12292: P = .54892; the other tail .0003.
        assertThat(first.settles()).isEqualTo(0.5492, within(1.0 / 32));
    }

    /** The same tape carries the same error; the laser of the job does not. */
    @Test
    void againstASharedErrorAnotherInstrumentIsProposed() {
        Job job = Boathouse.job(by(BENT)).instruments(List.of(BENT, LASER)).build();
        Assessment assessment = Assessment.of(job, least("opening.width.least", 1502), Parts.NONE);
        Finding finding = finding(assessment, "enough");
        assertThat(finding.verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(finding.retakes().get(0).by()).isEqualTo("laser");
        assertThat(finding.retakes().get(0).isWorthTaking()).isTrue();
        assertThat(finding.retakes()).noneMatch(retake -> retake.by().equals("tape"));
        assertThat(assessment.survey().complete()).isFalse();
        assertThat(assessment.survey().next().orElseThrow().by()).isEqualTo("laser");
        // Drawn readings as below: 150 draws, 0.12, and 0.1 of the lattice.
        for (Retake retake : finding.retakes()) {
            double drawn = drawn(job, least("opening.width.least", 1502), LASER, retake);
            assertThat(retake.settles()).isEqualTo(drawn, within(0.12 + 0.1));
        }
        assertThat(finding.retakes()).anyMatch(retake -> retake.settles() > 0.3);
    }

    /** Without a second instrument in the job the instrument stays open. */
    @Test
    void whereNoInstrumentOfTheJobHelpsItStaysOpen() {
        Job job = Boathouse.job(by(BENT)).instruments(List.of(BENT)).build();
        Finding finding = finding(Assessment.of(job, least("opening.width.least", 1502), Parts.NONE), "enough");
        assertThat(finding.retakes().get(0).by()).isEmpty();
        assertThat(finding.retakes().get(0).settles()).isBetween(0.3, 1.0);
    }

    @Test
    void whatCannotBeReadIsNotAskedFor() {
        List<Cannot> cannot = new ArrayList<>();
        for (Reading reading : Boathouse.readings()) {
            if (!reading.name().equals("width@1/2")) {
                cannot.add(new Cannot(Span.parse(reading.name()), "in the way"));
            }
        }
        OpeningFacts facts = new OpeningFacts(
                "recess",
                Double.NaN,
                HeadTowards.RIDGE,
                true,
                2,
                Finish.FINISHED,
                by(BENT),
                cannot,
                Map.of(),
                List.of(),
                List.of(),
                List.of());
        Job job = Boathouse.job(facts).instruments(List.of(BENT, LASER)).build();
        Finding finding = finding(Assessment.of(job, least("opening.width.least", 1502), Parts.NONE), "enough");
        assertThat(finding.retakes()).isNotEmpty();
        assertThat(finding.retakes())
                .allSatisfy(retake -> assertThat(retake.readings()).containsExactly("width@1/2"));
    }

    /** What no reading settles keeps nobody on the ladder. The doubt of a declared figure is no reading's. */
    @Test
    void oneMayComeDownWhereNoReadingIsWorthTaking() {
        Rulebook rules = least("site.headroom", 2300);
        FigureValue headroom = new FigureValue(Uncertain.of(2305, Influence.normal("h", 5)), Dimension.LENGTH);
        Job job = Boathouse.job(Boathouse.readings())
                .declared(Map.of("site.headroom", headroom))
                .build();
        Assessment assessment = Assessment.of(job, rules, Parts.NONE);
        assertThat(finding(assessment, "enough").verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(assessment.survey().complete()).isTrue();
    }

    /**
     * The gap follows the size, which is decided anew: a better reading of a width moves the estimate of the gap hardly at
     * all. Held against drawn readings, each assessed in full, with their own generator; 150 draws (three standard errors:
     * 0.12) and the sixteenth of the lattice with its 0.1.
     */
    @Test
    void oddsOfAGapAreThoseOfDrawnReadingsAndNotThoseOfAHeldSize() {
        Job job = Boathouse.job(Boathouse.readings()).build();
        Catalogue catalogue = Figures.CATALOGUE;
        Survey survey = new Survey(job.opening().readings(), 2, Finish.FINISHED);
        Extreme gap = (Extreme)
                new Line(job, Boathouse.rules(), Parts.NONE, catalogue, Surveyed.of(job, Boathouse.rules(), survey))
                        .figures()
                        .get("gap.least");
        Uncertain now = Objects.requireNonNull(gap).governing().value();
        Rulebook rules = least("gap.least", now.value() - 1.4 * now.standardUncertainty());
        Line line = new Line(job, rules, Parts.NONE, catalogue, Surveyed.of(job, rules, survey));
        BoundChecks bounds = new BoundChecks(job, rules, line.opening(), line.boundable(), catalogue);
        BoundClause clause = rules.bounds().get(1);
        assertThat(bounds.findings().get(1).verdict()).isEqualTo(Verdict.UNDECIDED);
        List<Retake> held = bounds.candidates(clause, survey.readingDoubts());
        Prospects prospects = new Prospects(job, rules, Parts.NONE, catalogue, line.opening(), bounds);
        double apart = 0;
        for (Retake retake : held) {
            if (!retake.by().isEmpty()) {
                double settles = prospects.settles(clause, retake);
                assertThat(settles).isEqualTo(drawn(job, rules, Boathouse.TAPE, retake), within(0.12 + 0.1));
                apart = Math.max(apart, Math.abs(settles - retake.settles()));
            }
        }
        assertThat(apart).isGreaterThan(0.25);
    }

    private static double drawn(Job job, Rulebook rules, Instrument by, Retake retake) {
        Catalogue catalogue = Figures.CATALOGUE;
        Line line = new Line(
                job,
                rules,
                Parts.NONE,
                catalogue,
                Surveyed.of(job, rules, new Survey(job.opening().readings(), 2, Finish.FINISHED)));
        Random random = new Random(20261125);
        Further further = Further.of(line.opening(), retake.readings(), by, retake.times());
        int count = 150;
        int settled = 0;
        for (int n = 0; n < count; n++) {
            Map<String, Double> errors = new HashMap<>();
            double[] values = new double[further.expected().size()];
            for (int i = 0; i < values.length; i++) {
                Uncertain expected = further.expected().get(i);
                values[i] = expected.value();
                for (int k = 0; k < expected.influences().size(); k++) {
                    values[i] += expected.contribution(k)
                            * errors.computeIfAbsent(
                                    expected.influences().get(k).id(), id -> random.nextGaussian());
                }
            }
            Line then = new Line(job, rules, Parts.NONE, catalogue, Surveyed.of(job, rules, further.survey(values)));
            Finding finding = new BoundChecks(job, rules, then.opening(), then.boundable(), catalogue)
                    .findings()
                    .get(1);
            settled += finding.verdict() == Verdict.UNDECIDED ? 0 : 1;
        }
        return (double) settled / count;
    }
}
