package quoin.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quoin.judge.Caution;
import quoin.judge.Finding;
import quoin.judge.Reason;
import quoin.judge.Verdict;

/** What stops a job and what does not: common practice, no source. */
class SiteChecksTest {
    private static SiteFacts facts(String fact, String value, String platform) {
        Map<String, String> stated = new HashMap<>(Map.of("platform", platform));
        stated.put(fact, value);
        return SiteFacts.of(stated);
    }

    @ParameterizedTest
    @CsvSource({
        "role, light, tower, PASS",
        "role, escape, tower, FAIL",
        "role, smoke, tower, FAIL",
        "role, access, tower, FAIL",
        "role, unknown, tower, UNDECIDED",
        "glazed, yes, tower, PASS",
        "glazed, no, tower, FAIL",
        "glassMakerAsked, yes, tower, PASS",
        "glassMakerAsked, no, tower, FAIL",
        "glassMakerAsked, unknown, tower, UNDECIDED",
        "structure, rafter, tower, PASS",
        "structure, truss, tower, FAIL",
        "structure, engineered, tower, FAIL",
        "below, floor, none, PASS",
        "below, stairs, tower, PASS",
        "below, stairs, none, FAIL",
        "below, water, ladder, FAIL",
        "below, void, unknown, UNDECIDED",
        "platform, tower, tower, PASS",
        "platform, none, none, PASS",
        "platform, ladder, ladder, FAIL",
    })
    void factsStopAJobOrLetItGoOn(String fact, String value, String platform, Verdict expected) {
        Finding finding = SiteChecks.check(facts(fact, value, platform), fact);
        assertThat(finding.verdict()).isEqualTo(expected);
        assertThat(finding.clause()).isEqualTo("site." + fact);
        assertThat(finding.steps()).hasSize(1);
        if (expected == Verdict.UNDECIDED) {
            assertThat(finding.reason()).contains(Reason.NOT_VERIFIED);
        }
    }

    @Test
    void everyFactIsUnknownFirst() {
        List<String> all = List.copyOf(SiteFacts.ANSWERS.keySet());
        assertThat(SiteChecks.findings(SiteFacts.UNKNOWN, all))
                .hasSize(6)
                .allMatch(finding -> finding.verdict() == Verdict.UNDECIDED);
        assertThat(SiteFacts.UNKNOWN).isEqualTo(SiteFacts.of(Map.of())).hasSameHashCodeAs(SiteFacts.of(Map.of()));
    }

    @Test
    void whatIsNotInTheListsIsRefused() {
        assertThatThrownBy(() -> SiteFacts.of(Map.of("role", "storage"))).hasMessageContaining("storage");
        assertThatThrownBy(() -> SiteFacts.of(Map.of("weather", "dry"))).hasMessageContaining("weather");
        assertThat(SiteFacts.of(Map.of("role", "light")).toString()).contains("light");
    }

    @Test
    void cautionsApplyWorstFirst() {
        List<Caution> driven = Cautions.of(SiteFacts.UNKNOWN, new Cautions.Power(true, 230));
        assertThat(driven).isSortedAccordingTo((a, b) -> a.severity().compareTo(b.severity()));
        assertThat(driven.stream().map(Caution::code))
                .contains("licensed-electrician", "stored-energy", "not-on-glazing");
        List<Caution> still = Cautions.of(SiteFacts.of(Map.of("glazed", "no")), new Cautions.Power(false, Double.NaN));
        assertThat(still.stream().map(Caution::code))
                .doesNotContain("licensed-electrician", "stored-energy", "not-on-glazing")
                .contains("second-retention", "clear-below");
        assertThat(Cautions.of(SiteFacts.UNKNOWN, new Cautions.Power(true, 24)).stream()
                        .map(Caution::code))
                .doesNotContain("licensed-electrician");
        assertThat(Cautions.of(SiteFacts.UNKNOWN, new Cautions.Power(true, Double.NaN)).stream()
                        .map(Caution::code))
                .contains("licensed-electrician");
    }
}
