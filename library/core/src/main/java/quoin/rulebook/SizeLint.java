package quoin.rulebook;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import quoin.judge.Args;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.parts.Parts;

/** What is wrong with the sizes. */
final class SizeLint {
    /** The sizes without which there is no frame. */
    private static final List<String> REQUIRED = List.of("frame.width", "frame.length");

    /** A cycle is named as far as this. */
    private static final int SHOWN = 20;

    private static final String ORDER = "order-figure-in-size";

    private final Report report;
    private final Names names;
    private final QuotaLint quotas;

    SizeLint(Report report, Names names, List<Parts> parts) {
        this.report = report;
        this.names = names;
        this.quotas = new QuotaLint(report, names, parts);
    }

    void check(List<SizeClause> sizes) {
        for (String id : REQUIRED) {
            if (!names.isSize(id)) {
                report.error("missing-size", "/sizes", Args.of("size", id));
            }
        }
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < sizes.size(); i++) {
            SizeClause clause = sizes.get(i);
            String at = "/sizes/" + i;
            if (!seen.add(clause.id())) {
                report.error("duplicate-id", at + "/id", Args.of("id", clause.id()));
            }
            clause(clause, at);
        }
    }

    private void clause(SizeClause clause, String at) {
        if (names.figure(clause.id()).isPresent() && !REQUIRED.contains(clause.id())) {
            report.error("size-named-as-figure", at + "/id", Args.of("id", clause.id()));
        }
        if (names.cyclic().contains(clause.id())) {
            List<String> cycle = names.cycleFrom(clause.id(), SHOWN);
            report.error("cycle", at + "/of", Args.of("size", clause.id()).with("sizes", cycle));
        }
        base(clause, at + "/of");
        Optional<Dimension> kind = names.dimension(clause.id());
        items(clause.less(), at + "/less", kind);
        items(clause.more(), at + "/more", kind);
        round(clause.round(), at + "/round", kind);
        cut(clause, at + "/cutWithin", kind);
        report.source(clause.id(), clause.source(), at);
    }

    private void base(SizeClause clause, String at) {
        if (clause.of() instanceof Base.OfFigure of) {
            figure(of.figure(), at);
        } else if (clause.of() instanceof Base.OfShortfall of) {
            figure(of.figure(), at + "/figure");
            if (!(of.probability() > 0 && of.probability() <= 0.5)) {
                Args args = Args.of("above", 0.0).with("atMost", 0.5);
                report.error(
                        "number-range",
                        at + "/shortfall",
                        args.with("got", of.probability()).with("unit", "1"));
            }
        } else if (clause.of() instanceof Base.OfQuota of) {
            quotas.check(of.quota(), at, at, ORDER, names.dimension(clause.id()), (a, p) -> report.above(0, a, p));
        }
    }

    private void figure(String name, String pointer) {
        if (!names.isKnown(name)) {
            report.error("unknown-figure", pointer, names.unknown(name));
        } else if (names.isOrder(name)) {
            report.error(ORDER, pointer, Args.of("figure", name));
        }
    }

    private void items(List<Item> items, String at, Optional<Dimension> kind) {
        for (int i = 0; i < items.size(); i++) {
            Item item = items.get(i);
            String place = at + "/" + i;
            quotas.check(item.quota(), place, place + "/amount", ORDER, kind, (a, p) -> report.atLeast(0, a, p));
            Amount times = new Amount(item.times(), Dimension.RATIO);
            report.above(0, times, place + "/times");
            report.bounded(times, place + "/times");
        }
    }

    private void round(Rounding rounding, String at, Optional<Dimension> kind) {
        if (rounding instanceof Rounding.Step step) {
            amount(step.amount(), at + "/" + step.mode().text(), kind);
        } else if (rounding instanceof Rounding.DownTo downTo) {
            if (downTo.list().isEmpty()) {
                report.error("empty-list", at + "/downTo", Args.NONE);
            }
            for (int i = 0; i < downTo.list().size(); i++) {
                amount(downTo.list().get(i), at + "/downTo/" + i, kind);
            }
        }
    }

    private void amount(Amount amount, String pointer, Optional<Dimension> kind) {
        kind.ifPresent(expected -> report.dimension(expected, amount.dimension(), pointer));
        report.above(0, amount, pointer);
        report.bounded(amount, pointer);
    }

    private void cut(SizeClause clause, String pointer, Optional<Dimension> kind) {
        if (!Double.isNaN(clause.cutWithin())) {
            Amount cut = new Amount(clause.cutWithin(), Dimension.LENGTH);
            kind.ifPresent(expected -> report.dimension(expected, Dimension.LENGTH, pointer));
            report.atLeast(0, cut, pointer);
            report.bounded(cut, pointer);
        }
    }
}
