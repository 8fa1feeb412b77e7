package quoin.rulebook;

import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import quoin.judge.DecisionRule;
import quoin.judge.Source;
import quoin.measure.Amount;
import quoin.measure.Doubt;
import quoin.parts.CanonicalText;

/** The canonical text of a rulebook: every field in a fixed order, clauses sorted by id. */
final class RulebookText {
    private final CanonicalText text = CanonicalText.of("quoin-rulebook/1");

    private RulebookText() {}

    static CanonicalText of(Rulebook rulebook) {
        RulebookText writer = new RulebookText();
        writer.text
                .text("id", rulebook.id())
                .text("version", rulebook.version())
                .text("effective", rulebook.effective())
                .text("title", rulebook.title());
        writer.decide(rulebook.decide());
        writer.frame(rulebook.frame());
        rulebook.sizes().stream().sorted(Comparator.comparing(SizeClause::id)).forEach(writer::size);
        rulebook.bounds().stream().sorted(Comparator.comparing(BoundClause::id)).forEach(writer::bound);
        rulebook.tables().stream().sorted(Comparator.comparing(Table::id)).forEach(writer::table);
        rulebook.survey().needs().stream().sorted().forEach(need -> writer.text.text("needs", need));
        if (!Double.isNaN(rulebook.survey().detectsMm())) {
            writer.text.number("detects", rulebook.survey().detectsMm());
        }
        new TreeMap<>(rulebook.survey().goodTo()).forEach(writer::goodTo);
        rulebook.fixings().ifPresent(writer::fixings);
        rulebook.siteAsks().ifPresent(writer::siteAsks);
        rulebook.sourceAsks().stream().sorted().forEach(date -> writer.text.text("sources.asks", date));
        return writer.text;
    }

    private void decide(DecisionRule rule) {
        if (rule instanceof DecisionRule.Guarded guarded) {
            text.number("guarded", guarded.probability());
        } else {
            text.text("decide", "simple");
        }
    }

    private void frame(FrameRule frame) {
        text.open("frame").text("hold", frame.hold().text()).text("keep", frame.keep());
        frame.depth().forEach(depth -> text.amount("depth", depth));
        text.close();
    }

    private void size(SizeClause clause) {
        text.open("size").text("id", clause.id());
        base(clause.of());
        clause.less().forEach(item -> item("less", item));
        clause.more().forEach(item -> item("more", item));
        round(clause.round());
        text.number("cutWithin", clause.cutWithin())
                .text("because", clause.because())
                .source(clause.source())
                .close();
    }

    private void base(Base base) {
        if (base instanceof Base.OfFigure of) {
            text.text("of", of.figure());
        } else if (base instanceof Base.OfShortfall of) {
            text.open("of")
                    .text("figure", of.figure())
                    .number("shortfall", of.probability())
                    .close();
        } else if (base instanceof Base.OfQuota of) {
            quota("of", of.quota());
        }
    }

    private void item(String name, Item item) {
        text.open(name);
        quota("quota", item.quota());
        text.number("times", item.times())
                .text("because", item.because())
                .source(item.source())
                .close();
    }

    private void quota(String name, Quota quota) {
        text.open(name);
        if (quota instanceof Quota.Fixed fixed) {
            text.amount("amount", fixed.amount()).source(fixed.source());
            own(fixed.number().withBecause(fixed.number().because(), Source.UNSTATED));
        } else if (quota instanceof Quota.Banded banded) {
            text.text("by", banded.by());
            if (!banded.table().isEmpty()) {
                text.text("table", banded.table());
            }
            banded.bands().forEach(this::band);
        } else if (quota instanceof Quota.ByChoice by) {
            text.text("choice", by.choice());
            new TreeMap<>(by.numbers()).forEach((part, number) -> {
                text.open("part").text("id", part).amount("amount", number.amount());
                own(number);
                text.close();
            });
        }
        text.close();
    }

    private void band(Quota.Band band) {
        text.open("band").amount("upTo", band.upTo()).amount("amount", band.amount());
        own(band.number());
        text.close();
    }

    /** What a number has beside its amount; nothing where it has nothing, so that older digests stay. */
    private void own(Stated number) {
        if (number.isBare()) {
            return;
        }
        text.open("number").text("id", number.id());
        for (Doubt doubt : number.doubt()) {
            text.text("doubt", doubt.statement().name())
                    .text("growth", doubt.growth().name())
                    .number("is", doubt.amount())
                    .number("k", doubt.coverageFactor());
        }
        text.text("because", number.because()).source(number.source()).close();
    }

    private void table(Table table) {
        text.open("table").text("id", table.id()).text("title", table.title());
        table.bands().forEach(this::band);
        text.text("because", table.because()).source(table.source()).close();
    }

    private void goodTo(String place, Amount u) {
        text.open("goodTo").text("of", place).amount("u", u).close();
    }

    private void round(Rounding round) {
        if (round instanceof Rounding.Step step) {
            text.open("round").amount(step.mode().text(), step.amount()).close();
        } else if (round instanceof Rounding.DownTo downTo) {
            text.open("round");
            downTo.list().stream()
                    .sorted(Comparator.comparingDouble(Amount::value))
                    .forEach(amount -> text.amount("downTo", amount));
            text.close();
        }
    }

    private void bound(BoundClause clause) {
        text.open("bound").text("id", clause.id()).text("figure", clause.figure());
        limit("atLeast", clause.atLeast());
        limit("atMost", clause.atMost());
        limit("within", clause.within());
        clause.decide().forEach(this::decide);
        text.text("because", clause.because()).source(clause.source()).close();
    }

    private void limit(String name, List<Quota> quotas) {
        quotas.forEach(quota -> quota(name, quota));
    }

    private void fixings(FixingRule rule) {
        text.open("fixings")
                .amount("fromEnd.aim", rule.fromEndAim())
                .amount("fromEnd.atLeast", rule.atLeast())
                .amount("fromEnd.atMost", rule.atMost())
                .amount("fromEdge", rule.fromEdge())
                .amount("pitch.atLeast", rule.pitchAtLeast())
                .amount("pitch.atMost", rule.pitchAtMost())
                .amount("mark", rule.mark())
                .text("into", rule.into())
                .text("fastener", rule.fastener())
                .source(rule.source());
        rule.packers().forEach(packer -> text.amount("packer", packer));
        text.close();
    }

    private void siteAsks(List<String> facts) {
        text.open("site");
        facts.stream().sorted().forEach(fact -> text.text("asks", fact));
        text.close();
    }
}
