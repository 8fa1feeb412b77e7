package quoin.json;

import java.util.List;
import quoin.judge.DecisionRule;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.rulebook.Base;
import quoin.rulebook.BoundClause;
import quoin.rulebook.FixingRule;
import quoin.rulebook.FrameRule;
import quoin.rulebook.Item;
import quoin.rulebook.Quota;
import quoin.rulebook.Rounding;
import quoin.rulebook.Rulebook;
import quoin.rulebook.SizeClause;
import quoin.rulebook.Stated;
import quoin.rulebook.SurveyRule;
import quoin.rulebook.Table;

/** Writes a rulebook with its keys in a fixed order. Not safe for use by many threads. */
final class RulebookWriter {
    private final Out out = Out.pages();

    String write(Rulebook book) {
        out.start();
        out.field("format", RulebookDocument.FORMAT);
        out.field("id", book.id());
        out.field("version", book.version());
        out.field("effective", book.effective());
        out.optional("title", book.title());
        decide(book.decide());
        frame(book.frame());
        if (!book.tables().isEmpty()) {
            out.array("tables", book.tables(), (o, table) -> table(table));
        }
        out.array("sizes", book.sizes(), (o, size) -> size(size));
        out.array("bounds", book.bounds(), (o, bound) -> bound(bound));
        survey(book.survey());
        book.fixings().ifPresent(this::fixings);
        book.siteAsks().ifPresent(asks -> {
            out.startObject("site");
            out.texts("asks", asks);
            out.end();
        });
        if (!book.sourceAsks().isEmpty()) {
            out.startObject("sources");
            out.texts("asks", book.sourceAsks());
            out.end();
        }
        out.end();
        return out.text() + "\n";
    }

    private void survey(SurveyRule survey) {
        if (survey.equals(SurveyRule.NONE)) {
            return;
        }
        out.startObject("survey");
        needs(survey);
        if (!Double.isNaN(survey.detectsMm())) {
            out.amount("detects", new Amount(survey.detectsMm(), Dimension.LENGTH));
        }
        out.end();
    }

    private void decide(DecisionRule rule) {
        out.startObject("decide");
        if (rule instanceof DecisionRule.Guarded guarded) {
            out.field("rule", "guarded");
            out.field("probability", guarded.probability());
        } else if (rule instanceof DecisionRule.Simple) {
            out.field("rule", "simple");
        } else {
            throw new IllegalArgumentException("decision rule must be simple or guarded in a document, got " + rule);
        }
        out.end();
    }

    private void frame(FrameRule frame) {
        out.startObject("frame");
        out.field("hold", frame.hold().text());
        out.field("keep", frame.keep());
        if (!frame.depth().isEmpty()) {
            amounts("depth", frame.depth());
        }
        out.end();
    }

    private void amounts(String name, List<Amount> amounts) {
        out.startArray(name);
        amounts.forEach(out::amount);
        out.endArray();
    }

    private void size(SizeClause size) {
        out.field("id", size.id());
        if (size.of() instanceof Base.OfFigure figure) {
            out.field("of", figure.figure());
        } else if (size.of() instanceof Base.OfShortfall shortfall) {
            out.startObject("of");
            out.field("figure", shortfall.figure());
            out.field("shortfall", shortfall.probability());
            out.end();
        } else if (size.of() instanceof Base.OfQuota of
                && of.quota() instanceof Quota.Fixed fixed
                && fixed.number().isBare()) {
            out.amount("of", fixed.amount());
        } else if (size.of() instanceof Base.OfQuota of) {
            out.startObject("of");
            quota(of.quota());
            out.end();
        }
        items("less", size.less());
        items("more", size.more());
        round(size.round());
        if (!Double.isNaN(size.cutWithin())) {
            out.amount("cutWithin", new Amount(size.cutWithin(), Dimension.LENGTH));
        }
        out.optional("because", size.because());
        out.source(size.source());
    }

    private void items(String name, List<Item> items) {
        if (items.isEmpty()) {
            return;
        }
        out.array(name, items, (o, item) -> {
            quota(item.quota());
            if (item.times() != 1) {
                out.field("times", item.times());
            }
            out.optional("because", item.because());
            out.source(item.source());
        });
    }

    private void quota(Quota quota) {
        if (quota instanceof Quota.Fixed fixed) {
            number("amount", fixed.number());
        } else if (quota instanceof Quota.Banded banded && !banded.table().isEmpty()) {
            out.field("table", banded.table());
            out.field("by", banded.by());
        } else if (quota instanceof Quota.Banded banded) {
            out.startObject("bands");
            out.field("by", banded.by());
            bands(banded.bands());
            out.end();
        } else if (quota instanceof Quota.ByChoice chosen) {
            out.field("choice", chosen.choice());
            out.startObject("amounts");
            chosen.numbers().forEach(this::number);
            out.end();
        }
    }

    private void bands(List<Quota.Band> bands) {
        out.array("amounts", bands, (o, band) -> {
            out.amount("upTo", band.upTo());
            number("amount", band.number());
        });
    }

    /** A bare number is a text with its unit; one that rests on more is an object. */
    private void number(String name, Stated number) {
        if (number.isBare()) {
            out.amount(name, number.amount());
            return;
        }
        out.startObject(name);
        out.amount("value", number.amount());
        out.optional("id", number.id());
        number.doubt().forEach(out::doubt);
        out.optional("because", number.because());
        out.source(number.source());
        out.end();
    }

    private void table(Table table) {
        out.field("id", table.id());
        out.optional("title", table.title());
        bands(table.bands());
        out.optional("because", table.because());
        out.source(table.source());
    }

    private void needs(SurveyRule survey) {
        out.startArray("needs");
        for (String need : survey.needs()) {
            Amount u = survey.goodTo().get(need);
            if (u == null) {
                out.string(need);
            } else {
                out.start();
                out.field("of", need);
                out.amount("u", u);
                out.end();
            }
        }
        out.endArray();
    }

    private void round(Rounding round) {
        if (round instanceof Rounding.Step step) {
            out.startObject("round");
            out.amount(step.mode().text(), step.amount());
            out.end();
        } else if (round instanceof Rounding.DownTo list) {
            out.startObject("round");
            amounts("downTo", list.list());
            out.end();
        }
    }

    private void bound(BoundClause bound) {
        out.field("id", bound.id());
        out.field("figure", bound.figure());
        limit("atLeast", bound.atLeast());
        limit("atMost", bound.atMost());
        limit("within", bound.within());
        bound.decide().forEach(this::decide);
        out.optional("because", bound.because());
        out.source(bound.source());
    }

    private void limit(String name, List<Quota> limits) {
        for (Quota limit : limits) {
            if (limit instanceof Quota.Fixed fixed) {
                number(name, fixed.number());
            } else {
                out.startObject(name);
                quota(limit);
                out.end();
            }
        }
    }

    private void fixings(FixingRule rule) {
        out.startObject("fixings");
        out.startObject("fromEnd");
        out.amount("aim", rule.fromEndAim());
        out.amount("atLeast", rule.atLeast());
        out.amount("atMost", rule.atMost());
        out.end();
        out.amount("fromEdge", rule.fromEdge());
        out.startObject("pitch");
        out.amount("atLeast", rule.pitchAtLeast());
        out.amount("atMost", rule.pitchAtMost());
        out.end();
        out.amount("mark", rule.mark());
        out.field("into", rule.into());
        out.optional("fastener", rule.fastener());
        out.source(rule.source());
        if (!rule.packers().isEmpty()) {
            out.startArray("packers");
            rule.packers().forEach(out::amount);
            out.endArray();
        }
        out.end();
    }
}
