package quoin.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quoin.job.Assessment;
import quoin.parts.Parts;

/**
 * From a job document to the answer while somebody stands on the ladder: every kind of reading. The opening is a true
 * rectangle of 1500 by 2400 mm, so that every distance is known by Pythagoras. Mark: standard (plane geometry).
 */
class LiveSurveyTest {
    private static final double D = Math.hypot(1500, 2400);

    /** What is read of the true opening. */
    private static final Map<String, Double> SIX = new LinkedHashMap<>();

    static {
        SIX.put("width@head", 1500.0);
        SIX.put("length@right", 2400.0);
        SIX.put("width@foot", 1500.0);
        SIX.put("length@left", 2400.0);
        SIX.put("diagonal@head-left", D);
        SIX.put("diagonal@head-right", D);
    }

    private static String entry(String of, double read, String by) {
        return "{ \"of\": \"" + of + "\", \"read\": " + read + ", \"by\": \"" + by + "\" }";
    }

    private static List<String> six() {
        List<String> six = new ArrayList<>();
        SIX.forEach((of, read) -> six.add(entry(of, read, "tape")));
        return six;
    }

    private static List<String> with(String... more) {
        List<String> all = six();
        all.addAll(List.of(more));
        return all;
    }

    private static List<String> without(String of) {
        List<String> some = six();
        some.removeIf(entry -> entry.contains("\"" + of + "\""));
        return some;
    }

    private static String job(List<String> readings, String opening) {
        return "{ \"format\": \"quoin-job/1\", \"id\": \"live\", \"units\": \"mm\", \"instruments\": {"
                + "\"tape\": { \"kind\": \"tape\", \"each\": [ { \"u\": \"0.5 mm\" } ] },"
                + "\"rule\": { \"kind\": \"stated\", \"each\": [ { \"u\": \"0.4 mm\" } ] },"
                + "\"bevel\": { \"kind\": \"stated\", \"each\": [ { \"u\": \"0.05 deg\" } ] } },"
                + "\"opening\": { \"fit\": \"recess\", \"headTowards\": \"ridge\", \"straightWithin\": \"2 mm\","
                + opening + "\"readings\": [" + String.join(",", readings) + "] },"
                + "\"choose\": { \"rulebook\": { \"id\": \"live\" } } }";
    }

    private static String rules(String bounds, String survey) {
        return "{ \"format\": \"quoin-rulebook/1\", \"id\": \"live\", \"version\": \"1.0.0\", \"effective\": \"2026-01-01\","
                + "\"decide\": { \"rule\": \"guarded\", \"probability\": 0.95 }, \"sizes\": ["
                + "{ \"id\": \"frame.width\", \"of\": \"fit.width\", \"less\": [ { \"amount\": \"4 mm\", \"times\": 2 } ], \"source\": { \"kind\": \"assumption\" } },"
                + "{ \"id\": \"frame.length\", \"of\": \"fit.length\", \"less\": [ { \"amount\": \"4 mm\", \"times\": 2 } ], \"source\": { \"kind\": \"assumption\" } } ],"
                + "\"bounds\": [ { \"id\": \"goes-in\", \"figure\": \"gap.least\", \"atLeast\": \"1 mm\", \"source\": { \"kind\": \"assumption\" } }"
                + bounds + " ],"
                + "\"site\": { \"asks\": [] }, \"survey\": { " + survey + " } }";
    }

    private static final String NO_MORE = "\"needs\": []";

    /** The answer, read back. */
    private static Node answer(List<String> readings, String opening, String bounds, String survey) {
        Assessment assessment = Assessment.of(
                Examples.job(job(readings, opening)), Examples.rulebook(rules(bounds, survey)), Parts.NONE);
        Report report = new Report();
        Node root = Tree.of(AssessmentDocument.write(assessment), report).orElseThrow();
        assertThat(report.sorted()).isEmpty();
        return root;
    }

    private static Node at(Node node, String... names) {
        Node now = node;
        for (String name : names) {
            assertThat(now.fields()).as(String.join("/", names)).containsKey(name);
            now = now.fields().get(name).value();
        }
        return now;
    }

    private static boolean isComplete(Node root) {
        return at(root, "survey", "complete").kind() == Node.Kind.TRUE;
    }

    private static List<String> missing(Node root) {
        return at(root, "survey", "missing").items().stream().map(Node::text).toList();
    }

    private static String next(Node root) {
        Node survey = at(root, "survey");
        return survey.fields().containsKey("next") ? at(survey, "next", "of").text() : "";
    }

    private static Node finding(Node root, String clause) {
        return at(root, "findings").items().stream()
                .filter(finding -> at(finding, "clause").text().equals(clause))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> codes(Node finding) {
        return at(finding, "steps").items().stream()
                .map(step -> at(step, "code").text())
                .toList();
    }

    private static double figure(Node root, String id) {
        return Double.parseDouble(at(root, "figures", id, "value").text());
    }

    private static String verdict(Node root) {
        return at(root, "verdict").text();
    }

    // --- kinds that tie the outline ----------------------------------------------------------------------------

    /** In place of both diagonals: corner checks, crosses, angles. */
    @ParameterizedTest
    @CsvSource({
        "check@head-left:600 mm:800 mm, 1000, tape",
        "check@foot-right:300 mm:400 mm, 500, tape",
        "cross@head-left:right:1/2, 1920.937271, tape",
        "cross@foot-left:head:1/4, 2429.120211, tape"
    })
    void whatRunsAskewReplacesADiagonal(String of, double read, String by) {
        List<String> readings = without("diagonal@head-left");
        readings.removeIf(entry -> entry.contains("diagonal"));
        readings.add(entry(of, read, by));
        Node root = answer(readings, "", "", NO_MORE);
        assertThat(missing(root)).isEmpty();
        assertThat(figure(root, "fit.width")).isCloseTo(1500, within(0.01));
        assertThat(at(root, "adjustment", "readings").items())
                .extracting(node -> at(node, "of").text())
                .contains(of);
        assertThat(isComplete(root)).isEqualTo(next(root).isEmpty());
    }

    @Test
    void anAngleReplacesADiagonal() {
        List<String> readings = without("diagonal@head-left");
        readings.removeIf(entry -> entry.contains("diagonal"));
        assertThat(next(answer(readings, "", "", NO_MORE))).isEqualTo("diagonal@head-left");
        readings.add("{ \"of\": \"angle@foot-right\", \"read\": \"90 deg\", \"by\": \"bevel\" }");
        Node root = answer(readings, "", "", NO_MORE);
        assertThat(missing(root)).isEmpty();
        assertThat(figure(root, "opening.corner.head-left.angle")).isCloseTo(90, within(1e-6));
    }

    /** Needed and not read: each kind is asked for by an instrument that can read it. */
    @ParameterizedTest
    @CsvSource({
        "check@head-left:600 mm:800 mm, tape",
        "cross@head-left:right:1/2, tape",
        "angle@head-right, bevel",
        "bow@left:1/2, rule",
        "depth@middle, rule",
        "fall@head, rule",
        "width@1/4, tape"
    })
    void whatIsNeededIsAskedForByWhatCanReadIt(String need, String by) {
        Node root = answer(six(), "", "", "\"needs\": [\"" + need + "\"]");
        assertThat(missing(root)).containsExactly(need);
        assertThat(next(root)).isEqualTo(need);
        assertThat(at(root, "survey", "next", "by").text()).isEqualTo(by);
        assertThat(at(root, "survey", "next", "because", "code").text()).isEqualTo("missing");
        assertThat(isComplete(root)).isFalse();
        assertThat(verdict(root)).isEqualTo("undecided");
    }

    // --- falls and depths --------------------------------------------------------------------------------------

    /** A bound on the roller's fall asks for it, and judges it once it is read. */
    @Test
    void theFallOfTheHead() {
        String level =
                ", { \"id\": \"level\", \"figure\": \"roller.fall\", \"within\": \"5 mm\", \"source\": { \"kind\": \"assumption\" } }";
        Node asks = answer(six(), "", level, NO_MORE);
        assertThat(missing(asks)).containsExactly("fall@head");
        assertThat(next(asks)).isEqualTo("fall@head");
        Node read = answer(with(entry("fall@head", 2, "rule")), "", level, NO_MORE);
        assertThat(missing(read)).isEmpty();
        assertThat(figure(read, "roller.fall")).isEqualTo(2);
        assertThat(at(finding(read, "level"), "verdict").text()).isEqualTo("pass");
        assertThat(isComplete(read)).isTrue();
        Node steep = answer(with(entry("fall@head", -9, "rule")), "", level, NO_MORE);
        assertThat(at(finding(steep, "level"), "verdict").text()).isEqualTo("fail");
    }

    /** A bound on the twist asks for four depths in the order of the round; 142 + 143 − 140 − 141 = 4. */
    @Test
    void depthsForATwist() {
        String bound =
                ", { \"id\": \"flat\", \"figure\": \"opening.twist\", \"within\": \"8 mm\", \"source\": { \"kind\": \"assumption\" } }";
        Node asks = answer(six(), "", bound, NO_MORE);
        assertThat(missing(asks))
                .containsExactly("depth@head-left", "depth@head-right", "depth@foot-right", "depth@foot-left");
        List<String> readings = with(
                entry("depth@head-left", 142, "rule"),
                entry("depth@head-right", 140, "rule"),
                entry("depth@foot-right", 143, "rule"));
        assertThat(next(answer(readings, "", bound, NO_MORE))).isEqualTo("depth@foot-left");
        readings.add(entry("depth@foot-left", 141, "rule"));
        Node read = answer(readings, "", bound, NO_MORE);
        assertThat(figure(read, "opening.twist")).isEqualTo(4);
        assertThat(at(finding(read, "flat"), "verdict").text()).isEqualTo("pass");
        assertThat(isComplete(read)).isTrue();
        // A middle 30 mm off the others: nobody may come down, and one of them is asked for again.
        readings.add(entry("depth@middle", 172, "rule"));
        Node wrong = answer(readings, "", bound, NO_MORE);
        assertThat(at(finding(wrong, "planes"), "reason").text()).isEqualTo("readings-disagree");
        assertThat(isComplete(wrong)).isFalse();
        assertThat(next(wrong)).startsWith("depth@");
        // Every one read twice and still so: no reading is asked for, and the survey is still not complete.
        List<String> twice = new ArrayList<>(readings);
        twice.addAll(readings.subList(6, readings.size()));
        Node still = answer(twice, "", bound, NO_MORE);
        assertThat(next(still)).isEmpty();
        assertThat(isComplete(still)).isFalse();
    }

    @Test
    void oneDepthIsEnoughForTheLeast() {
        String bound =
                ", { \"id\": \"deep\", \"figure\": \"opening.depth.least\", \"atLeast\": \"110 mm\", \"source\": { \"kind\": \"assumption\" } }";
        assertThat(missing(answer(six(), "", bound, NO_MORE))).containsExactly("depth@head-left");
        Node read = answer(with(entry("depth@foot-left", 140, "rule")), "", bound, NO_MORE);
        assertThat(missing(read)).isEmpty();
        assertThat(at(finding(read, "deep"), "verdict").text()).isEqualTo("pass");
    }

    @Test
    void aBowIsAskedForWhereNothingTouchesTheSide() {
        String bound =
                ", { \"id\": \"straight-left\", \"figure\": \"opening.bow.left\", \"within\": \"6 mm\", \"source\": { \"kind\": \"assumption\" } }";
        assertThat(missing(answer(six(), "", bound, NO_MORE))).containsExactly("bow@left:1/2");
        String cannot = "\"cannot\": [ { \"of\": \"bow@left:1/2\", \"because\": \"no string holds\" } ],";
        assertThat(missing(answer(six(), cannot, bound, NO_MORE))).containsExactly("width@1/2");
        Node read = answer(with(entry("bow@left:1/2", 1, "rule")), "", bound, NO_MORE);
        assertThat(missing(read)).isEmpty();
        assertThat(figure(read, "opening.bow.left")).isCloseTo(1, within(0.2));
    }

    // --- front and back ----------------------------------------------------------------------------------------

    private static String behind(String of, double read) {
        return "{ \"of\": \"" + of + "\", \"in\": \"back\", \"read\": " + read + ", \"by\": \"tape\" }";
    }

    @Test
    void theBackWhereItIsAskedFor() {
        String bound =
                ", { \"id\": \"splay\", \"figure\": \"opening.splay.left\", \"atMost\": \"6 mm\", \"source\": { \"kind\": \"assumption\" } }";
        Node asks = answer(six(), "", bound, "\"needs\": [\"width@foot/back\"]");
        assertThat(missing(asks)).containsExactly("width@foot/back", "width@1/2/back");
        assertThat(next(asks)).isEqualTo("width@foot");
        assertThat(at(asks, "survey", "next", "in").text()).isEqualTo("back");
        Node read = answer(with(behind("width@foot", 1499), behind("width@1/2", 1498)), "", bound, "\"needs\": []");
        assertThat(missing(read)).isEmpty();
        assertThat(figure(read, "opening.width.least")).isLessThan(1499);
        // A reading behind is none in front.
        Node front = answer(with(behind("width@1/4", 1500)), "", "", "\"needs\": [\"width@1/4\"]");
        assertThat(missing(front)).containsExactly("width@1/4");
        assertThat(at(front, "survey", "next").fields()).doesNotContainKey("in");
    }

    @Test
    void aBackThatLeansTooFarOrIsNotDetermined() {
        Node leans = answer(with(behind("width@1/2", 1470)), "", "", NO_MORE);
        assertThat(isComplete(leans)).isFalse();
        assertThat(next(leans)).isEqualTo("width@1/2");
        assertThat(at(leans, "survey", "next", "in").text()).isEqualTo("back");
        assertThat(codes(finding(leans, "planes"))).containsExactly("back-leans-too-far");
        Node open = answer(with(behind("diagonal@head-left", D)), "", "", NO_MORE);
        assertThat(isComplete(open)).isFalse();
        assertThat(at(open, "survey", "next", "because", "code").text()).isEqualTo("back-not-determined");
        assertThat(at(open, "survey", "next", "in").text()).isEqualTo("back");
    }

    // --- the finish --------------------------------------------------------------------------------------------

    @Test
    void aBareOpeningWithWhatIsStillToCome() {
        Node none = answer(six(), "\"finish\": { \"state\": \"bare\" },", "", NO_MORE);
        assertThat(missing(none)).containsExactly("still");
        assertThat(isComplete(none)).isFalse();
        String still = "\"finish\": { \"state\": \"bare\", \"still\": { \"left\": \"15 mm\","
                + " \"head\": { \"value\": \"10 mm\", \"u\": \"0.5 mm\" } } },";
        Node lined = answer(six(), still, "", NO_MORE);
        assertThat(missing(lined)).isEmpty();
        assertThat(figure(lined, "fit.width")).isCloseTo(1485, within(0.01));
        assertThat(figure(lined, "fit.length")).isCloseTo(2390, within(0.01));
        assertThat(at(lined, "opening", "corners", "head-left").items())
                .extracting(Node::text)
                .containsExactly("0", "0");
    }

    // --- what cannot be read -----------------------------------------------------------------------------------

    private static final String ALL_SIX =
            "\"needs\": [\"width@head\", \"width@foot\", \"length@left\", \"length@right\","
                    + " \"diagonal@head-left\", \"diagonal@head-right\"]";

    @Test
    void whatCannotBeReadIsReplacedAndThenTheSurveyIsComplete() {
        String cannot = "\"cannot\": [ { \"of\": \"diagonal@head-left\", \"because\": \"chain opener\" } ],";
        List<String> five = without("diagonal@head-left");
        Node asks = answer(five, cannot, "", ALL_SIX);
        assertThat(missing(asks)).hasSize(1).doesNotContain("diagonal@head-left");
        assertThat(next(asks)).isEqualTo(missing(asks).get(0)).startsWith("cross@");
        double half = Math.hypot(1500, 1200);
        double other = Math.hypot(750, 2400);
        boolean tall = next(asks).contains(":left:") || next(asks).contains(":right:");
        five.add(entry(next(asks), tall ? half : other, "tape"));
        Node done = answer(five, cannot, "", ALL_SIX);
        assertThat(missing(done)).isEmpty();
        assertThat(codes(finding(done, "survey"))).contains("cannot");
        assertThat(at(finding(done, "survey"), "verdict").text()).isEqualTo("pass");
        assertThat(isComplete(done)).isEqualTo(next(done).isEmpty());
    }

    @Test
    void aDepthThatCannotBeReadHasNoReplacement() {
        String bound =
                ", { \"id\": \"flat\", \"figure\": \"opening.twist\", \"within\": \"8 mm\", \"source\": { \"kind\": \"assumption\" } }";
        String cannot = "\"cannot\": [ { \"of\": \"depth@foot-left\", \"because\": \"a beam\" } ],";
        List<String> readings = with(
                entry("depth@head-left", 142, "rule"),
                entry("depth@head-right", 140, "rule"),
                entry("depth@foot-right", 143, "rule"));
        Node root = answer(readings, cannot, bound, NO_MORE);
        assertThat(missing(root)).containsExactly("depth@foot-left");
        assertThat(next(root)).isEmpty();
        assertThat(isComplete(root)).isFalse();
        assertThat(verdict(root)).isEqualTo("undecided");
    }

    // --- slips that must not stay unnoticed --------------------------------------------------------------------

    /** The rulebook states the slip; what is asked for, taken one after the other, ends with every reading checked so. */
    @Test
    void theRulesStateWhichSlipMustBeNoticed() {
        String survey = ALL_SIX + ", \"detects\": \"6 mm\"";
        List<String> readings = six();
        Node root = answer(readings, "", "", survey);
        assertThat(missing(root)).isNotEmpty();
        for (int i = 0; i < 12 && !missing(root).isEmpty(); i++) {
            readings.add(entry(next(root), read(next(root)), "tape"));
            root = answer(readings, "", "", survey);
        }
        assertThat(missing(root)).isEmpty();
        assertThat(at(root, "adjustment", "readings").items())
                .allSatisfy(reading -> assertThat(
                                Double.parseDouble(at(reading, "detectable").text()))
                        .isLessThanOrEqualTo(
                                6.01)); // the plan is of the rectangle as read, the answer of the adjusted outline
    }

    /** Nothing with this tape: said so, not asked for, never passed. */
    @Test
    void aSlipThatNothingHereNotices() {
        Node root = answer(six(), "", "", ALL_SIX + ", \"detects\": \"0.5 mm\"");
        assertThat(missing(root)).isEmpty();
        assertThat(codes(finding(root, "survey"))).contains("slip-unseen");
        assertThat(at(finding(root, "survey"), "reason").text()).isEqualTo("incomplete");
        assertThat(verdict(root)).isEqualTo("undecided");
    }

    /** A distance of the true rectangle. */
    private static double read(String of) {
        if (SIX.containsKey(of)) {
            return SIX.getOrDefault(of, 0.0);
        }
        if (of.startsWith("cross@")) {
            boolean tall = of.contains(":left:") || of.contains(":right:");
            return tall ? Math.hypot(1500, 1200) : Math.hypot(750, 2400);
        }
        return of.startsWith("width@") ? 1500 : 2400;
    }

    // --- readings that cannot be right together ----------------------------------------------------------------

    /** 4000 mm across 1500 and 2400: those three, and nobody may come down. */
    @Test
    void readingsThatCannotCloseNameTheirGroup() {
        List<String> readings = without("diagonal@head-right");
        readings.set(2, entry("width@foot", 1700, "tape"));
        readings.set(3, entry("length@left", 2500, "tape"));
        readings.set(4, entry("diagonal@head-left", 4000, "tape"));
        Node root = answer(readings, "", "", NO_MORE);
        assertThat(missing(root)).isEmpty();
        assertThat(isComplete(root)).isFalse();
        assertThat(next(root)).isNotEmpty();
        Node adjustment = finding(root, "adjustment");
        assertThat(at(adjustment, "reason").text()).isEqualTo("readings-disagree");
        assertThat(codes(adjustment)).containsExactly("cannot-close");
        assertThat(at(at(adjustment, "steps").items().get(0), "args", "readings")
                        .items())
                .extracting(Node::text)
                .containsExactly("width@head", "length@right", "diagonal@head-left");
        assertThat(at(root, "adjustment", "suspects").items()).hasSize(1);
        assertThat(new String(Examples.utf8(verdict(root)), StandardCharsets.UTF_8))
                .isEqualTo("undecided");
    }

    /** 30 mm by the string and by the width where 2 mm were stated: the side is named, no reading is called misread. */
    @Test
    void aSideFarFromStraightIsNamed() {
        List<String> bowed = with(entry("width@1/2", 1470, "tape"), entry("bow@right:1/2", 30, "rule"));
        Node root = answer(bowed, "", "", NO_MORE);
        Node straight = finding(root, "straight");
        assertThat(at(straight, "reason").text()).isEqualTo("readings-disagree");
        Node args = at(at(straight, "steps").items().get(0), "args");
        assertThat(at(args, "side").text()).isEqualTo("right");
        assertThat(at(args, "at").text()).isEqualTo("1/2");
        assertThat(Double.parseDouble(at(args, "bow").text())).isCloseTo(30, within(0.5));
        assertThat(at(args, "within").text()).isEqualTo("2");
        assertThat(at(root, "adjustment", "suspects").items())
                .allSatisfy(suspect -> assertThat(at(suspect, "slips").items()).isEmpty());
        assertThat(next(root)).isEqualTo("bow@right:1/2");
        bowed.add(entry("bow@right:1/2", 30, "rule"));
        Node twice = answer(bowed, "", "", NO_MORE);
        assertThat(next(twice)).isEmpty();
        assertThat(isComplete(twice)).isFalse();
    }
}
