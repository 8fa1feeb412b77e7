package quoin.clearance;

import java.util.ArrayList;
import java.util.List;
import quoin.judge.Args;
import quoin.judge.Finding;
import quoin.judge.Reason;
import quoin.judge.Source;
import quoin.judge.Step;

/** Whether the facts of a site let a job go on: some stop it, and each one that is unknown leaves it open. */
public final class SiteChecks {
    private SiteChecks() {}

    private static final Source PRACTICE =
            Source.of(Source.Kind.PRACTICE, "common practice; the local code and the competent person on site decide");

    /**
     * One finding for each fact that is asked for.
     *
     * @param facts what is known
     * @param asked the facts that are asked for, by name
     * @return the findings, named {@code site.FACT}, in the order of the closed lists
     */
    public static List<Finding> findings(SiteFacts facts, List<String> asked) {
        List<Finding> findings = new ArrayList<>();
        for (String fact : SiteFacts.ANSWERS.keySet()) {
            if (asked.contains(fact)) {
                findings.add(check(facts, fact));
            }
        }
        return findings;
    }

    /**
     * Whether one fact lets the job go on.
     *
     * @param facts what is known
     * @param fact the fact, such as {@code role}
     * @return pass, fail, or undecided while it is not known
     * @check site.FACT
     * @formula fail for role escape, smoke or access; not glazed; glass maker not asked; structure truss or engineered;
     *     below stairs, water or void without a tower; work from a ladder
     * @unit none
     * @edge unknown: undecided, not verified; never pass
     * @source practice: common practice, no source; local codes and licensed practice decide
     */
    public static Finding check(SiteFacts facts, String fact) {
        String clause = "site." + fact;
        String value = facts.get(fact);
        Step step = new Step("site-fact", Args.of("fact", fact).with("value", value), PRACTICE);
        if (value.equals("unknown")) {
            return Finding.undecided(clause, Reason.NOT_VERIFIED).plusStep(step);
        }
        boolean stops = switch (fact) {
            case "role" -> !value.equals("light");
            case "glazed", "glassMakerAsked" -> value.equals("no");
            case "structure" -> value.equals("truss") || value.equals("engineered");
            case "below" -> !value.equals("floor") && isWithoutTower(facts);
            case "platform" -> value.equals("ladder");
            default ->
                throw new IllegalArgumentException(
                        "site fact must be one of " + SiteFacts.ANSWERS.keySet() + ", got " + fact);
        };
        boolean open = fact.equals("below") && stops && facts.get("platform").equals("unknown");
        Finding finding = open
                ? Finding.undecided(clause, Reason.NOT_VERIFIED)
                : stops ? Finding.fail(clause) : Finding.pass(clause);
        return finding.plusStep(step);
    }

    private static boolean isWithoutTower(SiteFacts facts) {
        return !facts.get("platform").equals("tower");
    }
}
