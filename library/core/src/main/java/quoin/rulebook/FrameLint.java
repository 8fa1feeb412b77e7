package quoin.rulebook;

import java.util.List;
import quoin.judge.Args;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.parts.Parts;

/** What is wrong with the frame, the fixings and the facts asked for. */
final class FrameLint {
    /** The facts of the site that a rulebook can ask for. */
    private static final List<String> FACTS =
            List.of("role", "glazed", "glassMakerAsked", "structure", "below", "platform");

    private final Report report;

    FrameLint(Report report) {
        this.report = report;
    }

    void check(Rulebook rulebook, List<Parts> parts) {
        depth(rulebook.frame().depth());
        rulebook.fixings().ifPresent(rule -> fixings(rule, parts));
        List<String> asks = rulebook.siteAsks().orElse(List.of());
        for (int i = 0; i < asks.size(); i++) {
            if (!FACTS.contains(asks.get(i))) {
                Args args = Args.of("fact", asks.get(i)).with("known", FACTS);
                report.error("unknown-site-fact", "/site/asks/" + i, args);
            }
        }
    }

    private void depth(List<Amount> depth) {
        for (int i = 0; i < depth.size(); i++) {
            String pointer = "/frame/depth/" + i;
            length(depth.get(i), pointer);
            report.atLeast(0, depth.get(i), pointer);
        }
        if (depth.size() == 2) {
            ascending(depth.get(0), depth.get(1), "/frame/depth/1");
        }
    }

    private void fixings(FixingRule rule, List<Parts> parts) {
        positive(rule.fromEndAim(), "/fixings/fromEnd/aim");
        positive(rule.atLeast(), "/fixings/fromEnd/atLeast");
        positive(rule.atMost(), "/fixings/fromEnd/atMost");
        positive(rule.fromEdge(), "/fixings/fromEdge");
        positive(rule.pitchAtLeast(), "/fixings/pitch/atLeast");
        positive(rule.pitchAtMost(), "/fixings/pitch/atMost");
        positive(rule.mark(), "/fixings/mark");
        ascending(rule.atLeast(), rule.fromEndAim(), "/fixings/fromEnd/aim");
        ascending(rule.fromEndAim(), rule.atMost(), "/fixings/fromEnd/atMost");
        ascending(rule.pitchAtLeast(), rule.pitchAtMost(), "/fixings/pitch/atMost");
        report.source("fixings", rule.source(), "/fixings");
        boolean known = parts.stream().anyMatch(list -> list.fasteners().containsKey(rule.fastener()));
        if (!parts.isEmpty() && !known) {
            Args args = Args.of("choice", "fastener").with("part", rule.fastener());
            report.warning("unknown-part", "/fixings/fastener", args);
        }
    }

    private void positive(Amount amount, String pointer) {
        length(amount, pointer);
        report.above(0, amount, pointer);
    }

    private void length(Amount amount, String pointer) {
        report.dimension(Dimension.LENGTH, amount.dimension(), pointer);
        report.bounded(amount, pointer);
    }

    private void ascending(Amount low, Amount high, String pointer) {
        report.atLeast(low.value(), high, pointer);
    }
}
