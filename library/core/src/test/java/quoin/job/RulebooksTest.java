package quoin.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quoin.judge.DecisionRule;
import quoin.judge.Problem;
import quoin.rulebook.Rulebook;

/** The rules by which a job's rulebook is picked, each with what is said where none is. */
class RulebooksTest {
    private static final Rulebook FIRST = book("1.2.0", "2026-01-01", "");
    private static final Rulebook SECOND = book("1.3.0", "2026-10-01", "");
    private static final Rulebook LATER = book("2.0.0", "2027-01-01", "");
    private static final Rulebook ALTERED = book("1.3.0", "2026-10-01", "altered");
    private static final List<Rulebook> SEASONS = List.of(SECOND, LATER, FIRST);

    private static Rulebook book(String version, String effective, String title) {
        return Rulebook.of("heron-frame", version, effective, title, DecisionRule.simple());
    }

    private static Choices choose(String id, String version, String digest) {
        return new Choices(id, version, digest, "", Map.of(), "", "", "");
    }

    private static Choices choose(String version, String digest) {
        return choose("heron-frame", version, digest);
    }

    private static String why(Choices choose, String taken, List<Rulebook> given) {
        Optional<Problem> why = Rulebooks.whyNone(choose, taken, given);
        assertThat(why.isPresent())
                .as("a reason exactly where none is picked")
                .isNotEqualTo(Rulebooks.pick(choose, taken, given).isPresent());
        return why.map(Problem::code).orElse("");
    }

    /** The newest whose day is not after that of the job; the day itself counts. */
    @ParameterizedTest
    @CsvSource({
        "2026-01-01,1.2.0",
        "2026-09-30,1.2.0",
        "2026-10-01,1.3.0",
        "2026-12-31,1.3.0",
        "2027-01-01,2.0.0",
        "'',2.0.0"
    })
    void withoutAVersionTheNewestInForceIsPicked(String taken, String version) {
        assertThat(Rulebooks.pick(choose("", ""), taken, SEASONS).map(Rulebook::version))
                .contains(version);
        assertThat(why(choose("", ""), taken, SEASONS)).isEmpty();
    }

    @Test
    void noneThatIsOldEnoughIsSaidWithTheDays() {
        Problem problem =
                Rulebooks.whyNone(choose("", ""), "2025-12-31", SEASONS).orElseThrow();
        assertThat(problem.code()).isEqualTo("no-rulebook-in-force");
        assertThat(problem.pointer()).isEqualTo("/choose/rulebook");
        assertThat(problem.args().asMap())
                .containsEntry("taken", "2025-12-31")
                .containsEntry(
                        "known",
                        List.of(
                                "heron-frame 1.3.0 of 2026-10-01",
                                "heron-frame 2.0.0 of 2027-01-01",
                                "heron-frame 1.2.0 of 2026-01-01"));
    }

    @Test
    void aVersionIsTakenWheneverItCameIntoForce() {
        assertThat(Rulebooks.pick(choose("2.0.0", ""), "2026-11-02", SEASONS)).contains(LATER);
        assertThat(why(choose("1.4.0", ""), "2026-11-02", SEASONS)).isEqualTo("no-rulebook");
        assertThat(why(choose("heron-square", "", ""), "2026-11-02", SEASONS)).isEqualTo("no-rulebook");
        assertThat(why(choose("", ""), "", List.of())).isEqualTo("no-rulebook");
    }

    @Test
    void aDigestThatDiffersIsSaidWithThoseAtHand() {
        Problem problem = Rulebooks.whyNone(choose("1.3.0", ALTERED.digest()), "", SEASONS)
                .orElseThrow();
        assertThat(problem.code()).isEqualTo("no-rulebook-digest");
        assertThat(problem.pointer()).isEqualTo("/choose/rulebook/digest");
        assertThat(problem.args().asMap())
                .containsEntry("digest", ALTERED.digest())
                .containsEntry("known", List.of("heron-frame 1.3.0 " + SECOND.digest()));
        assertThat(Rulebooks.pick(choose("1.3.0", SECOND.digest()), "", SEASONS))
                .contains(SECOND);
        assertThat(Rulebooks.pick(choose("", FIRST.digest()), "2026-11-02", SEASONS))
                .as("a digest alone finds an older one, too")
                .contains(FIRST);
        assertThat(why(choose("", LATER.digest()), "2026-11-02", SEASONS))
                .as("and none that was not in force")
                .isEqualTo("no-rulebook-digest");
    }

    @Test
    void twoOfOneVersionThatSayDifferentThingsAreNeverChosenBetween() {
        List<Rulebook> given = List.of(FIRST, SECOND, ALTERED);
        assertThat(why(choose("1.3.0", ""), "", given)).isEqualTo("rulebook-ambiguous");
        assertThat(why(choose("", ""), "2026-11-02", given)).isEqualTo("rulebook-ambiguous");
        assertThat(why(choose("", ""), "2026-09-01", given))
                .as("not yet in force")
                .isEmpty();
        assertThat(Rulebooks.pick(choose("1.3.0", ALTERED.digest()), "", given)).contains(ALTERED);
        assertThat(Rulebooks.pick(choose("1.3.0", ""), "", List.of(SECOND, book("1.3.0", "2026-10-01", ""))))
                .as("the same twice is one")
                .contains(SECOND);
        assertThat(Rulebooks.pick(choose("", ""), "", List.of(SECOND, ALTERED, LATER)))
                .as("a newer one is past the doubt")
                .contains(LATER);
    }

    @Test
    void ofOneDayTheHigherVersionIsTheNewer() {
        List<Rulebook> given = List.of(
                book("1.9.0", "2026-01-01", ""), book("1.10.0", "2026-01-01", ""), book("1.2", "2025-01-01", ""));
        assertThat(Rulebooks.pick(choose("", ""), "", given).map(Rulebook::version))
                .contains("1.10.0");
    }
}
