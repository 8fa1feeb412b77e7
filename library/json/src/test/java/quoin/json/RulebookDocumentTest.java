package quoin.json;

import static org.assertj.core.api.Assertions.assertThat;
import static quoin.json.Examples.changed;
import static quoin.json.Examples.rulebook;
import static quoin.json.Examples.utf8;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quoin.job.Figures;
import quoin.judge.DecisionRule;
import quoin.judge.Problem;
import quoin.judge.Source;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.rulebook.Base;
import quoin.rulebook.BoundClause;
import quoin.rulebook.FixingRule;
import quoin.rulebook.FrameRule;
import quoin.rulebook.Item;
import quoin.rulebook.Quota;
import quoin.rulebook.Rounding;
import quoin.rulebook.Rulebook;
import quoin.rulebook.SizeClause;

/** The values expected are read off the example of the format's description by eye. */
class RulebookDocumentTest {
    private static final Source ASSUMED = Source.of(Source.Kind.ASSUMPTION, "");
    private static final Source PRACTICE = Source.of(Source.Kind.PRACTICE, "");

    private final Rulebook book = rulebook(Examples.RULEBOOK);

    private static Amount mm(double mm) {
        return new Amount(mm, Dimension.LENGTH);
    }

    @Test
    void readsTheHead() {
        assertThat(book.id()).isEqualTo("heron-frame");
        assertThat(book.version()).isEqualTo("1.2.0");
        assertThat(book.effective()).isEqualTo("2026-01-01");
        assertThat(book.title()).isEqualTo("Invented demonstration rules");
        assertThat(book.decide()).isEqualTo(DecisionRule.guarded(0.95));
        assertThat(book.frame()).isEqualTo(new FrameRule(FrameRule.Hold.HEAD, "area", List.of(mm(20), mm(110))));
    }

    @Test
    void readsSizes() {
        Item gap = new Item(Quota.fixed(mm(3)), 2, "gap allowance each side", Source.UNSTATED);
        SizeClause width = SizeClause.of("frame.width", new Base.OfFigure("fit.width"))
                .withLess(gap)
                .withRound(new Rounding.Step(Rounding.Mode.DOWN, mm(1)))
                .withCutWithin(0.5)
                .withBecause("frame must enter", ASSUMED);
        SizeClause headbox = SizeClause.of("headbox.length", new Base.OfFigure("frame.width"))
                .withLess(new Item(Quota.byChoice("drive", Map.of("drive-m", mm(4))), 1, "end plates", Source.UNSTATED))
                .withBecause("sits between the channels", ASSUMED);
        SizeClause tube = SizeClause.of(
                        "tube.diameter",
                        new Base.OfQuota(new Quota.Banded(
                                "frame.width",
                                List.of(new Quota.Band(mm(1800), mm(50)), new Quota.Band(mm(3000), mm(63))))))
                .withBecause("bending", ASSUMED);
        assertThat(book.sizes()).hasSize(5).contains(width, headbox, tube);
        assertThat(book.sizes().get(4).more())
                .containsExactly(new Item(Quota.fixed(mm(350)), 1, "wraps and hem", Source.UNSTATED));
    }

    @Test
    void readsBounds() {
        assertThat(book.bounds())
                .containsExactly(
                        BoundClause.of("goes-in", "gap.least")
                                .withAtLeast(Quota.fixed(mm(1)))
                                .withDecide(DecisionRule.guarded(0.99))
                                .withBecause("must enter without force", ASSUMED),
                        BoundClause.of("light-strip", "gap.greatest")
                                .withAtMost(Quota.fixed(mm(9)))
                                .withBecause("the cover strip hides no more", ASSUMED),
                        BoundClause.of("out-of-square", "opening.diagonal.difference")
                                .withWithin(Quota.fixed(mm(6)))
                                .withBecause("the gap becomes a wedge", PRACTICE));
    }

    @Test
    void readsSurveyAndFixings() {
        assertThat(book.survey().needs()).hasSize(7).startsWith("headTowards").endsWith("diagonal@head-right");
        assertThat(book.fixings())
                .contains(new FixingRule(
                        mm(100), mm(50), mm(150), mm(25), mm(60), mm(400), mm(1), "reveal", "screw-8", PRACTICE));
        assertThat(book.siteAsks()).isEmpty();
    }

    @Test
    void whatIsWrittenReadsBackTheSame() {
        String written = RulebookDocument.write(book);
        assertThat(rulebook(written)).isEqualTo(book);
        assertThat(rulebook(written).digest()).isEqualTo(book.digest());
        assertThat(written).doesNotContain("\r").endsWith("}\n").contains("\n  \"id\": \"heron-frame\",\n");
    }

    @Test
    void everyDemoRulebookReadsBackTheSame() {
        List<String> books = Examples.demo(RulebookDocument.FORMAT);
        assertThat(books).isNotEmpty();
        for (String text : books) {
            assertThat(rulebook(RulebookDocument.write(rulebook(text)))).isEqualTo(rulebook(text));
        }
    }

    @Test
    void readsAStream() throws IOException {
        assertThat(RulebookDocument.read(new ByteArrayInputStream(utf8(Examples.RULEBOOK)))
                        .value())
                .contains(book);
    }

    @Test
    void everyFormOfAClauseReadsBack() {
        Rulebook other = rulebook("""
                { "format": "quoin-rulebook/1", "id": "b", "version": "2", "effective": "2026-01-01", "decide": { "rule": "simple" },
                  "sizes": [
                    { "id": "frame.width", "of": { "figure": "fit.width", "shortfall": 0.01 }, "round": { "nearest": "1/16 in" },
                      "source": { "kind": "standard", "ref": "r", "verifiedOn": "2026-01-02", "reviewBy": "2027-01-02" } },
                    { "id": "frame.length", "of": "fit.length", "round": { "downTo": ["600 mm", "2 m"] },
                      "more": [ { "bands": { "by": "frame.width", "amounts": [ { "upTo": "9 m", "amount": "2 mm" } ] },
                                  "source": { "kind": "tested" } } ], "source": { "kind": "declared" } },
                    { "id": "bar.length", "of": "1500 mm", "round": { "up": "5 mm" }, "source": { "kind": "handbook" } } ],
                  "bounds": [
                    { "id": "a", "figure": "opening.square.worst", "within": "0.2 deg", "source": { "kind": "practice" } },
                    { "id": "b", "figure": "frame.width", "atLeast": "300 mm",
                      "atMost": { "bands": { "by": "frame.length", "amounts": [ { "upTo": "9 m", "amount": "3 m" } ] } },
                      "source": { "kind": "practice" } } ],
                  "site": { "asks": ["glazed", "role"] } }
                """);
        assertThat(other.sizes().get(0).of()).isEqualTo(new Base.OfShortfall("fit.width", 0.01));
        assertThat(other.sizes().get(0).source())
                .isEqualTo(new Source(Source.Kind.STANDARD, "r", "2026-01-02", "2027-01-02"));
        assertThat(other.sizes().get(1).round()).isEqualTo(new Rounding.DownTo(List.of(mm(600), mm(2000))));
        assertThat(other.sizes().get(2).of()).isEqualTo(new Base.OfQuota(Quota.fixed(mm(1500))));
        assertThat(other.siteAsks()).contains(List.of("glazed", "role"));
        assertThat(rulebook(RulebookDocument.write(other))).isEqualTo(other);
    }

    @Test
    void aFigureThatNoRoomKnowsIsAtItsPlace() {
        String text = changed(Examples.RULEBOOK, "\"figure\": \"gap.least\"", "\"figure\": \"gap.leest\"");
        Read<Rulebook> read = RulebookDocument.read(utf8(text));
        assertThat(read.value()).isEmpty();
        assertThat(read.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.code()).isEqualTo("unknown-figure");
            assertThat(problem.pointer()).isEqualTo("/bounds/0/figure");
            assertThat(Examples.placeOf(problem)).isEqualTo(Examples.placeOf(text, "\"gap.leest\""));
            assertThat(problem.args().get("nearest").orElseThrow().toString()).contains("gap.least");
        });
    }

    @Test
    void aWarningDoesNotRefuse() {
        String text = changed(
                Examples.RULEBOOK,
                "\"because\": \"bending\", \"source\": { \"kind\": \"assumption\" }",
                "\"because\": \"bending\"");
        Read<Rulebook> read = RulebookDocument.read(utf8(text));
        assertThat(read.value()).isPresent();
        assertThat(read.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.code()).isEqualTo("missing-source");
            assertThat(problem.severity()).isEqualTo(Problem.Severity.WARNING);
            assertThat(Examples.placeOf(problem)).isEqualTo(Examples.placeOf(text, "{ \"id\": \"tube.diameter\""));
        });
    }

    @Test
    void choicesAreHeldAgainstThePartsAtHand() {
        byte[] text = utf8(changed(Examples.RULEBOOK, "{ \"drive-m\": \"4 mm\" }", "{ \"drive-x\": \"4 mm\" }"));
        assertThat(RulebookDocument.read(text).problems()).isEmpty();
        List<Problem> problems = RulebookDocument.read(text, Figures.CATALOGUE, List.of(Examples.parts(Examples.PARTS)))
                .problems();
        assertThat(problems)
                .isNotEmpty()
                .allSatisfy(problem -> assertThat(problem.pointer()).startsWith("/sizes/2/less/0"));
    }

    @Test
    void aMissingSizeIsAProblemOfTheDocument() {
        String text = Examples.RULEBOOK.replace("\"frame.length\"", "\"frame.height\"");
        assertThat(RulebookDocument.read(utf8(text)).problems()).anySatisfy(problem -> {
            assertThat(problem.code()).isEqualTo("missing-size");
            assertThat(problem.line()).isPositive();
        });
    }
}
