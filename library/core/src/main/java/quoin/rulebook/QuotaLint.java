package quoin.rulebook;

import java.util.List;
import java.util.Optional;
import quoin.judge.Args;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.parts.Parts;

/** What is wrong with an amount: its kind, its bands, its choices. */
final class QuotaLint {
    private final Report report;
    private final Names names;
    private final List<Parts> parts;

    QuotaLint(Report report, Names names, List<Parts> parts) {
        this.report = report;
        this.names = names;
        this.parts = parts;
    }

    /**
     * Checks one amount.
     *
     * @param at where it stands
     * @param fixedAt where it stands if it is a fixed one
     * @param orderCode the problem of an order figure that picks a band here
     * @param kind the kind of quantity it must be; empty where that is not known
     * @param check what its numbers must keep
     */
    void check(Quota quota, String at, String fixedAt, String orderCode, Optional<Dimension> kind, Check check) {
        if (quota instanceof Quota.Fixed fixed) {
            amount(fixed.amount(), fixedAt, kind, check);
        } else if (quota instanceof Quota.Banded banded) {
            by(banded, at + (banded.table().isEmpty() ? "/bands/by" : "/by"), orderCode);
            bands(banded, at, kind, check);
        } else if (quota instanceof Quota.ByChoice by) {
            choice(by, at, kind, check);
        }
    }

    /** What a number must keep. */
    interface Check {
        void of(Amount amount, String pointer);
    }

    private void amount(Amount amount, String pointer, Optional<Dimension> kind, Check check) {
        kind.ifPresent(expected -> report.dimension(expected, amount.dimension(), pointer));
        report.bounded(amount, pointer);
        check.of(amount, pointer);
    }

    private void by(Quota.Banded banded, String pointer, String orderCode) {
        if (!names.isKnown(banded.by())) {
            report.error("unknown-figure", pointer, names.unknown(banded.by()));
        } else if (names.isOrder(banded.by())) {
            report.error(orderCode, pointer, Args.of("figure", banded.by()));
        }
    }

    private void bands(Quota.Banded banded, String at, Optional<Dimension> kind, Check check) {
        Optional<Dimension> edges = names.dimension(banded.by());
        if (banded.table().isEmpty()) {
            bands(banded.by(), banded.bands(), at + "/bands/amounts", edges, kind);
            for (int i = 0; i < banded.bands().size(); i++) {
                check.of(banded.bands().get(i).amount(), at + "/bands/amounts/" + i + "/amount");
            }
            return;
        }
        for (Quota.Band band : banded.bands()) {
            edges.ifPresent(expected -> report.dimension(expected, band.upTo().dimension(), at + "/by"));
            kind.ifPresent(expected -> report.dimension(expected, band.amount().dimension(), at + "/table"));
            check.of(band.amount(), at + "/table");
        }
    }

    /** What is wrong with a list of bands, whoever uses it. */
    void bands(String by, List<Quota.Band> bands, String at, Optional<Dimension> edges, Optional<Dimension> amounts) {
        if (bands.isEmpty()) {
            report.error("band-gap", at, Args.of("by", by).with("above", 0.0));
            return;
        }
        Dimension edge = edges.orElse(bands.get(0).upTo().dimension());
        Dimension amount = amounts.orElse(bands.get(0).amount().dimension());
        for (int i = 0; i < bands.size(); i++) {
            Quota.Band band = bands.get(i);
            String pointer = at + "/" + i + "/upTo";
            amount(band.upTo(), pointer, Optional.of(edge), (value, place) -> report.above(0, value, place));
            amount(band.amount(), at + "/" + i + "/amount", Optional.of(amount), (value, place) -> {});
            if (i > 0) {
                order(by, bands, i, pointer);
            }
        }
    }

    /** The witness is what more than one band claims: from above the next lower edge before it, up to its own. */
    private void order(String by, List<Quota.Band> bands, int at, String pointer) {
        Amount before = bands.get(at - 1).upTo();
        Amount edge = bands.get(at).upTo();
        if (edge.value() > before.value() || edge.dimension() != before.dimension()) {
            return;
        }
        double above = 0;
        for (Quota.Band band : bands.subList(0, at)) {
            double lower = band.upTo().value();
            above = lower < edge.value() && lower > above ? lower : above;
        }
        Args args = Args.of("by", by)
                .with("above", edge.dimension().toAnswer(above))
                .with("witness", edge.toAnswer())
                .with("before", before.toAnswer())
                .with("unit", edge.dimension().answerUnit());
        report.error(edge.value() == before.value() ? "band-overlap" : "band-order", pointer, args);
    }

    private void choice(Quota.ByChoice by, String at, Optional<Dimension> kind, Check check) {
        Args args = Args.of("choice", by.choice());
        if (!Parts.CHOICES.contains(by.choice())) {
            report.error("unknown-choice", at + "/choice", args.with("known", Parts.CHOICES));
            return;
        }
        if (by.amounts().isEmpty()) {
            report.error("choice-not-covered", at + "/amounts", args.with("missing", List.of()));
        }
        Optional<Dimension> first = kind.or(
                () -> by.amounts().values().stream().map(Amount::dimension).findFirst());
        by.amounts().forEach((part, amount) -> amount(amount, at + "/amounts" + Report.step(part), first, check));
        covered(by, at, args);
    }

    private void covered(Quota.ByChoice by, String at, Args args) {
        List<String> known = parts.stream()
                .flatMap(list -> list.names(by.choice()).stream())
                .distinct()
                .toList();
        List<String> missing =
                known.stream().filter(part -> !by.amounts().containsKey(part)).toList();
        if (!missing.isEmpty()) {
            report.error("choice-not-covered", at + "/amounts", args.with("missing", missing));
        }
        if (!parts.isEmpty()) {
            by.amounts().keySet().stream()
                    .filter(part -> !known.contains(part))
                    .forEach(part -> report.warning(
                            "unknown-part", at + "/amounts" + Report.step(part), args.with("part", part)));
        }
    }
}
