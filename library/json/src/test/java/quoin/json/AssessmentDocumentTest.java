package quoin.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import quoin.job.Assessment;
import quoin.job.Job;
import quoin.job.Receipt;
import quoin.judge.Args;
import quoin.judge.Finding;
import quoin.judge.Problem;
import quoin.judge.Retake;
import quoin.measure.Extreme;
import quoin.measure.Uncertain;
import quoin.opening.AdjustedReading;
import quoin.opening.Corner;
import quoin.parts.Parts;
import quoin.rulebook.Rulebook;

/** What the answer holds, against the assessment that it was written from. */
class AssessmentDocumentTest {
    private static final Rulebook RULEBOOK = Examples.rulebook(Examples.RULEBOOK);
    private static final Parts PARTS = Examples.parts(Examples.PARTS);

    /** In the order of the format's description. */
    private static final List<String> KEYS = List.of(
            "format",
            "job",
            "jobDigest",
            "library",
            "semantics",
            "rulebook",
            "parts",
            "verdict",
            "probability",
            "survey",
            "opening",
            "adjustment",
            "figures",
            "sizes",
            "order",
            "findings",
            "cutList",
            "setOut",
            "packers",
            "cautions",
            "notChecked",
            "problems",
            "carry");

    /** Each job is assessed once; the values are immutable. */
    private static final Map<String, Assessment> ASSESSED =
            jobs().stream().collect(Collectors.toMap(text -> text, AssessmentDocumentTest::fresh));

    private static Assessment assess(String job) {
        return ASSESSED.containsKey(job) ? ASSESSED.get(job) : fresh(job);
    }

    private static Assessment fresh(String job) {
        return Assessment.of(Examples.job(job), RULEBOOK, PARTS);
    }

    /** The example of the format and every demo. */
    static List<String> jobs() {
        List<String> jobs = new ArrayList<>(Examples.demo(JobDocument.FORMAT));
        jobs.add(Examples.JOB);
        return jobs;
    }

    private static Node parse(String answer) {
        Report report = new Report();
        Node root = Tree.of(answer, report).orElseThrow();
        assertThat(report.sorted()).isEmpty();
        return root;
    }

    private static Node at(Node node, String... names) {
        Node now = node;
        for (String name : names) {
            assertThat(now.fields()).containsKey(name);
            now = now.fields().get(name).value();
        }
        return now;
    }

    private static double number(Node node, String... names) {
        return Double.parseDouble(at(node, names).text());
    }

    private static void all(Node node, List<Node> into) {
        into.add(node);
        node.items().forEach(item -> all(item, into));
        node.fields().values().forEach(field -> all(field.value(), into));
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void keysStandInTheOrderOfTheFormat(String text) {
        String answer = AssessmentDocument.write(assess(text));
        assertThat(answer).doesNotContain("\n");
        List<String> keys = List.copyOf(parse(answer).fields().keySet());
        assertThat(keys).isEqualTo(KEYS.stream().filter(keys::contains).toList());
        assertThat(keys).contains("format", "job", "rulebook", "verdict", "survey", "findings", "carry");
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void noNumberIsMissingNotFiniteOrLonger(String text) {
        List<Node> nodes = new ArrayList<>();
        all(parse(AssessmentDocument.write(assess(text))), nodes);
        assertThat(nodes).noneMatch(node -> node.kind() == Node.Kind.NULL || node.kind() == Node.Kind.BROKEN);
        assertThat(nodes)
                .filteredOn(node -> node.kind() == Node.Kind.NUMBER)
                .isNotEmpty()
                .allSatisfy(node -> {
                    assertThat(node.text())
                            .doesNotEndWith(".0")
                            .doesNotStartWith("-0,")
                            .isNotEqualTo("-0");
                    assertThat(Double.parseDouble(node.text())).isFinite();
                });
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void theSameCallGivesTheSameBytesEverywhere(String text) {
        String answer = AssessmentDocument.write(assess(text));
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            for (String other : List.of("ar-EG-u-nu-arab", "tr-TR")) {
                Locale.setDefault(Locale.forLanguageTag(other));
                TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
                assertThat(AssessmentDocument.write(fresh(text))).isEqualTo(answer);
                assertThat(JobDocument.write(Examples.job(JobDocument.write(Examples.job(text)))))
                        .isEqualTo(JobDocument.write(Examples.job(text)));
            }
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void figuresAndSizesAreInAnswerUnits(String text) {
        Assessment assessment = assess(text);
        Node figures = at(parse(AssessmentDocument.write(assessment)), "figures");
        assertThat(figures.fields().keySet())
                .containsExactlyElementsOf(assessment.figures().keySet());
        assessment.figures().forEach((id, figure) -> {
            Node node = at(figures, id);
            assertThat(number(node, "value"))
                    .as(id)
                    .isEqualTo(figure.dimension().toAnswer(figure.estimate().value()));
            assertThat(at(node, "unit").text()).isEqualTo(figure.dimension().answerUnit());
            assertThat(node.fields().containsKey("u")).isEqualTo(figure.estimate() instanceof Uncertain);
            if (figure.estimate() instanceof Extreme extreme) {
                String parts = switch (extreme.kind()) {
                    case LEAST -> "leastOf";
                    case GREATEST -> "greatestOf";
                    case LARGEST_IN_SIZE -> "largestOf";
                };
                assertThat(at(node, parts).items()).hasSameSizeAs(extreme.parts());
                assertThat(node.fields()).doesNotContainKey("dof");
            }
        });
        Node sizes = at(parse(AssessmentDocument.write(assessment)), "sizes");
        assessment.sizes().all().forEach(size -> {
            assertThat(number(sizes, size.id(), "value")).isEqualTo(size.value());
            assertThat(at(sizes, size.id(), "unit").text()).isEqualTo("mm");
            assertThat(at(sizes, size.id()).fields().containsKey("within")).isEqualTo(size.within() > 0);
        });
    }

    /** One width behind is checked by the straightness of the sides; one depth by nothing. */
    @Test
    void theBackAndTheDepthsStandUnderPlanes() {
        Node planes = at(at(parse(AssessmentDocument.write(assess(Examples.JOB))), "adjustment"), "planes");
        assertThat(planes.fields().keySet()).containsExactly("back", "depth");
        Node back = at(planes, "back");
        assertThat(number(back, "redundancy")).isEqualTo(1);
        assertThat(at(at(back, "readings").items().get(0), "of").text()).isEqualTo("width@1/2");
        assertThat(number(at(back, "readings").items().get(0), "detectable")).isPositive();
        Node depth = at(planes, "depth");
        assertThat(number(depth, "redundancy")).isZero();
        assertThat(at(depth, "readings").items().get(0).fields())
                .containsKey("of")
                .doesNotContainKey("w");
    }

    /** No document states a doubt of few degrees of freedom: infinite is what the numbers have. */
    @Test
    void degreesOfFreedomAreThoseOfTheNumber() {
        Assessment assessment = assess(Examples.JOB);
        Node figures = at(parse(AssessmentDocument.write(assessment)), "figures");
        assertThat(at(at(figures, "opening.diagonal.difference"), "dof").text()).isEqualTo("infinite");
    }

    /** 90 degrees and a bit: an angle is answered in degrees, not in radians. */
    @Test
    void cornersOfARoomAreAboutNinetyDegrees() {
        Node figures = at(parse(AssessmentDocument.write(assess(Examples.JOB))), "figures");
        for (Corner corner : Corner.values()) {
            Node angle = at(figures, "opening.corner." + corner.text() + ".angle");
            assertThat(number(angle, "value")).isCloseTo(90, within(1.0));
            assertThat(number(angle, "u")).isBetween(0.001, 1.0);
            assertThat(at(angle, "unit").text()).isEqualTo("deg");
        }
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void whatIsNotKnownIsAbsent(String text) {
        Assessment assessment = assess(text);
        Node root = parse(AssessmentDocument.write(assessment));
        assertThat(root.fields().containsKey("probability"))
                .isEqualTo(assessment.probability().isPresent());
        assertThat(root.fields().containsKey("opening"))
                .isEqualTo(assessment.shape().isPresent());
        assertThat(root.fields().containsKey("order"))
                .isEqualTo(assessment.order().isPresent());
        List<Node> findings = at(root, "findings").items();
        assertThat(findings).hasSameSizeAs(assessment.findings());
        for (int i = 0; i < findings.size(); i++) {
            Finding finding = assessment.findings().get(i);
            Node node = findings.get(i);
            assertThat(at(node, "clause").text()).isEqualTo(finding.clause());
            assertThat(at(node, "verdict").text()).isEqualTo(finding.verdict().text());
            assertThat(node.fields().containsKey("figure"))
                    .isEqualTo(!finding.figure().isEmpty());
            assertThat(node.fields().containsKey("reason"))
                    .isEqualTo(finding.reason().isPresent());
            assertThat(node.fields().containsKey("probability"))
                    .isEqualTo(finding.odds().isPresent());
            assertThat(node.fields().containsKey("method"))
                    .isEqualTo(finding.odds().isPresent());
            assertThat(node.fields().containsKey("margin"))
                    .isEqualTo(finding.margin().isPresent());
            assertThat(node.fields().containsKey("retake"))
                    .isEqualTo(!finding.retakes().isEmpty());
            for (int j = 0; j < finding.retakes().size(); j++) {
                Retake retake = finding.retakes().get(j);
                Node asked = at(node, "retake").items().get(j);
                assertThat(asked.fields().containsKey("u")).isEqualTo(Double.isFinite(retake.u()));
                assertThat(asked.fields().containsKey("settles")).isEqualTo(Double.isFinite(retake.settles()));
                assertThat(at(asked, "readings").items()).hasSameSizeAs(retake.readings());
            }
        }
        List<Node> readings = at(root, "adjustment", "readings").items();
        for (int i = 0; i < readings.size(); i++) {
            AdjustedReading reading = assessment.adjustment().readings().get(i);
            assertThat(readings.get(i).fields().containsKey("w")).isEqualTo(Double.isFinite(reading.w()));
            assertThat(readings.get(i).fields().containsKey("detectable"))
                    .isEqualTo(Double.isFinite(reading.detectable()));
            if (Double.isFinite(reading.detectable())) {
                Node effect = at(readings.get(i), "effect");
                assertThat(number(effect, "width")).isEqualTo(reading.effect().widthMm());
                assertThat(number(effect, "length")).isEqualTo(reading.effect().lengthMm());
                assertThat(number(effect, "angle"))
                        .isCloseTo(Math.toDegrees(reading.effect().angleRad()), within(1e-12));
            }
        }
    }

    @Test
    void theDemosHoldReadingsThatNothingChecks() {
        List<Assessment> all = Examples.demo(JobDocument.FORMAT).stream()
                .map(AssessmentDocumentTest::assess)
                .toList();
        assertThat(all.stream().flatMap(a -> a.adjustment().readings().stream()))
                .anyMatch(r -> Double.isNaN(r.w()));
    }

    @Test
    void aBrokenOffSurveySaysWhatIsMissingAndWhatToReadNext() {
        String job = jobs().stream()
                .filter(text -> text.contains("survey broken off"))
                .findFirst()
                .orElseThrow();
        Node root = parse(AssessmentDocument.write(assess(job)));
        Node survey = at(root, "survey");
        assertThat(at(survey, "complete").kind()).isEqualTo(Node.Kind.FALSE);
        assertThat(at(survey, "missing").items()).extracting(Node::text).containsExactly("diagonal@head-right");
        assertThat(at(survey, "next", "of").text()).isEqualTo("diagonal@head-right");
        assertThat(at(survey, "next", "because", "code").text()).isEqualTo("missing");
        assertThat(at(root, "verdict").text()).isEqualTo("undecided");
    }

    @Test
    void aMisreadDiagonalIsSuspected() {
        String job = jobs().stream()
                .filter(text -> text.contains("one diagonal misread"))
                .findFirst()
                .orElseThrow();
        Node adjustment = at(parse(AssessmentDocument.write(assess(job))), "adjustment");
        assertThat(at(adjustment, "accepted").kind()).isEqualTo(Node.Kind.FALSE);
        Node suspect = at(adjustment, "suspects").items().get(0);
        assertThat(at(suspect, "readings").items()).extracting(Node::text).contains("diagonal@head-right");
        Node slip = at(suspect, "slips").items().get(0);
        assertThat(at(slip, "looksLike").text()).isEqualTo("whole-10-mm");
        // 10 mm were added to this diagonal of the demo; the other readings tell that to within a few of their doubts.
        assertThat(number(slip, "by")).isCloseTo(10, within(2.0));
        assertThat(number(slip, "corrected")).isEqualTo(2832);
    }

    @Test
    void angleReadingsAreAnsweredInDegreesUnderTheirOwnNames() {
        String text = Examples.changed(
                Examples.changed(
                        Examples.JOB,
                        "\"rule\":  {",
                        "\"bevel\": { \"kind\": \"stated\", \"each\": [ { \"u\": \"0.05 deg\" } ] },\n"
                                + "    \"rule\":  {"),
                "{ \"of\": \"width@1/2\", \"in\": \"back\"",
                "{ \"id\": \"bevel-1\", \"of\": \"angle@head-left\", \"read\": \"93 deg\", \"by\": \"bevel\" },\n"
                        + "      { \"of\": \"width@1/2\", \"in\": \"back\"");
        Assessment assessment = assess(text);
        AdjustedReading bevel = assessment.adjustment().readings().stream()
                .filter(reading -> reading.name().equals("bevel-1"))
                .findFirst()
                .orElseThrow();
        Node adjustment = at(parse(AssessmentDocument.write(assessment)), "adjustment");
        Node node = at(adjustment, "readings").items().stream()
                .filter(reading -> reading.fields().containsKey("id"))
                .findFirst()
                .orElseThrow();
        assertThat(at(node, "id").text()).isEqualTo("bevel-1");
        assertThat(at(node, "of").text()).isEqualTo("angle@head-left");
        assertThat(number(node, "residual")).isCloseTo(Math.toDegrees(bevel.residual()), within(1e-9));
        // Three degrees off: the slip is told in degrees, though the suspect goes by its own name.
        Node slip = at(adjustment, "suspects").items().stream()
                .flatMap(suspect -> at(suspect, "slips").items().stream())
                .filter(one -> at(one, "reading").text().equals("bevel-1"))
                .findFirst()
                .orElseThrow();
        assertThat(number(slip, "by")).isCloseTo(3, within(0.3));
    }

    @Test
    void aDoubtOfATemperatureIsADifference() {
        String job = Examples.changed(
                Examples.JOB,
                "\"site.headroom\": { \"value\": \"2.31 m\", \"u\": \"5 mm\" }",
                "\"site.warmth\": { \"value\": \"20 degC\", \"u\": \"2 K\" }");
        String bound = "\"bounds\": [\n    { \"id\": \"warm\", \"figure\": \"site.warmth\", \"atLeast\": \"25 degC\", "
                + "\"because\": \"glue\", \"source\": { \"kind\": \"practice\" } },";
        Rulebook rulebook = Examples.rulebook(Examples.changed(Examples.RULEBOOK, "\"bounds\": [", bound));
        Node root = parse(AssessmentDocument.write(Assessment.of(Examples.job(job), rulebook, PARTS)));
        Node figure = at(root, "figures", "site.warmth");
        assertThat(number(figure, "value")).isEqualTo(20);
        assertThat(number(figure, "u")).isEqualTo(2);
        assertThat(at(figure, "unit").text()).isEqualTo("degC");
        Node margin = at(root, "findings").items().stream()
                .filter(finding -> at(finding, "clause").text().equals("warm"))
                .map(finding -> at(finding, "margin"))
                .findFirst()
                .orElseThrow();
        assertThat(number(margin, "value")).isCloseTo(-5, within(1e-9));
        assertThat(number(margin, "u")).isEqualTo(2);
        assertThat(at(margin, "unit").text()).isEqualTo("K");
    }

    @Test
    void aJobWithoutPartsHasNone() {
        String answer = AssessmentDocument.write(Assessment.of(Examples.job(Examples.JOB), RULEBOOK, Parts.NONE));
        assertThat(parse(answer).fields()).doesNotContainKey("parts");
    }

    @Test
    void carryIsHandedThroughAsItWasWritten() {
        String from = "{ \"order\": \"any JSON up to 4 kB, handed through unread\" }";
        for (Map.Entry<String, String> carry : Map.of(
                        "[ 1.50, 1e5, true, null, { \"a\" : \"\\u00e9 \\\" \\\\ \\ud800\" } ]",
                        "[1.50,1e5,true,null,{\"a\":\"é \\\" \\\\ \\ud800\"}]",
                        "null",
                        "null",
                        "\"two\\nlines\"",
                        "\"two\\u000alines\"")
                .entrySet()) {
            Job job = Examples.job(Examples.changed(Examples.JOB, from, carry.getKey()));
            assertThat(AssessmentDocument.write(Assessment.of(job, RULEBOOK, PARTS)))
                    .endsWith(",\"carry\":" + carry.getValue() + "}")
                    .doesNotContain("\n");
            assertThat(Examples.job(JobDocument.write(job))).isEqualTo(job);
        }
    }

    @Test
    void nothingCarriedIsAnEmptyObject() {
        String job = Examples.demo(JobDocument.FORMAT).get(0);
        assertThat(job).doesNotContain("carry");
        assertThat(AssessmentDocument.write(assess(job))).endsWith(",\"carry\":{}}");
    }

    @Test
    void aRefusalNamesTheJobAndItsProblems() {
        Problem problem = Problem.error(
                        "unknown-field", "/colour", Args.of("field", "colour").with("known", List.of("a", "b")))
                .at(3, 7);
        assertThat(AssessmentDocument.refused("reading-room-2", List.of(problem)))
                .isEqualTo(
                        "{\"format\":\"quoin-assessment/1\",\"job\":\"reading-room-2\",\"library\":\"" + Receipt.LIBRARY
                                + "\",\"verdict\":\"refused\",\"problems\":[{\"code\":\"unknown-field\",\"severity\":\"error\","
                                + "\"pointer\":\"/colour\",\"line\":3,\"column\":7,"
                                + "\"args\":{\"field\":\"colour\",\"known\":[\"a\",\"b\"]}}]}");
        Problem warning = Problem.warning("missing-source", "/sizes/0", Args.of("times", 1.5));
        assertThat(AssessmentDocument.refused("", List.of(warning)))
                .contains("\"job\":null,")
                .endsWith(
                        "\"problems\":[{\"code\":\"missing-source\",\"severity\":\"warning\",\"pointer\":\"/sizes/0\","
                                + "\"args\":{\"times\":1.5}}]}");
    }
}
