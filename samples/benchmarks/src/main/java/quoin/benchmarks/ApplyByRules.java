package quoin.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import quoin.judge.Conformity;
import quoin.judge.Finding;
import quoin.judge.Source;
import quoin.measure.Dimension;
import quoin.rulebook.BoundClause;
import quoin.rulebook.FigureSource;
import quoin.rulebook.Limits;
import quoin.rulebook.Rulebook;
import quoin.rulebook.Size;
import quoin.rulebook.Sizes;
import quoin.rulebook.Sizing;

/** The sizes and bounds of a small rulebook, by the library: values, verdicts, odds, margins, and every step. */
final class ApplyByRules implements Work {
    private final Rulebook rulebook = Rules.small();
    Sizes sizes = Sizes.NONE;
    final List<Finding> findings = new ArrayList<>();

    @Override
    public double once(int time) {
        FigureSource survey = Rules.figures(time);
        sizes = Sizing.decide(rulebook, Rules.CATALOGUE, survey, Rules.CHOICES, Map.of());
        FigureSource all = sizes.before(survey);
        findings.clear();
        double sum = 0;
        for (Size size : sizes.all()) {
            sum += size.value() + size.steps().size();
        }
        for (BoundClause clause : rulebook.bounds()) {
            Limits.Stated limits = (Limits.Stated) clause.bound(all, Rules.CHOICES);
            Finding finding = Conformity.check(
                    clause.id(),
                    limits.on(all.estimate(clause.figure()).orElseThrow()),
                    Dimension.LENGTH,
                    clause.decideOr(rulebook.decide()),
                    limits.source().isStated() ? limits.source() : Source.UNSTATED);
            findings.add(finding);
            sum += finding.odds().orElseThrow().value()
                    + finding.margin().orElseThrow().value();
        }
        return sum;
    }
}
