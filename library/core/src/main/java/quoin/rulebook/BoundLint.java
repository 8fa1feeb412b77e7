package quoin.rulebook;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import quoin.judge.Args;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.parts.Parts;

/** What is wrong with the bounds. */
final class BoundLint {
    private final Report report;
    private final Names names;
    private final QuotaLint quotas;

    BoundLint(Report report, Names names, List<Parts> parts) {
        this.report = report;
        this.names = names;
        this.quotas = new QuotaLint(report, names, parts);
    }

    void check(List<BoundClause> bounds) {
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < bounds.size(); i++) {
            BoundClause clause = bounds.get(i);
            String at = "/bounds/" + i;
            if (!seen.add(clause.id())) {
                report.error("duplicate-id", at + "/id", Args.of("id", clause.id()));
            }
            if (!names.isKnown(clause.figure())) {
                report.error("unknown-figure", at + "/figure", names.unknown(clause.figure()));
            }
            limits(clause, at);
            report.source(clause.id(), clause.source(), at);
        }
    }

    private void limits(BoundClause clause, String at) {
        Optional<Dimension> kind = names.dimension(clause.figure());
        limit(clause.atLeast(), at + "/atLeast", kind, (amount, pointer) -> {});
        limit(clause.atMost(), at + "/atMost", kind, (amount, pointer) -> {});
        limit(clause.within(), at + "/within", kind, (amount, pointer) -> report.atLeast(0, amount, pointer));
        boolean sides = !clause.atLeast().isEmpty() || !clause.atMost().isEmpty();
        if (!sides && clause.within().isEmpty()) {
            report.error("no-limit", at, Args.of("clause", clause.id()));
        }
        if (sides && !clause.within().isEmpty()) {
            report.error("within-and-limit", at + "/within", Args.of("clause", clause.id()));
        }
        cross(clause, at);
    }

    private void limit(List<Quota> side, String at, Optional<Dimension> kind, QuotaLint.Check check) {
        side.forEach(quota -> quotas.check(quota, at, at, "order-figure-in-band", kind, check));
    }

    private void cross(BoundClause clause, String at) {
        Optional<Amount> least = fixed(clause.atLeast());
        Optional<Amount> most = fixed(clause.atMost());
        if (least.isPresent()
                && most.isPresent()
                && least.get().value() > most.get().value()) {
            Args args = Args.of("atLeast", least.get().toAnswer())
                    .with("atMost", most.get().toAnswer())
                    .with("unit", most.get().dimension().answerUnit());
            report.error("limits-cross", at + "/atLeast", args);
        }
    }

    static Optional<Amount> fixed(List<Quota> side) {
        return !side.isEmpty() && side.get(0) instanceof Quota.Fixed fixed
                ? Optional.of(fixed.amount())
                : Optional.empty();
    }
}
