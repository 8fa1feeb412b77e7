package quoin.rulebook;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import quoin.judge.Args;
import quoin.measure.Amount;
import quoin.measure.Dimension;

/**
 * Whether a size steps down as the opening grows: at a band's edge what is taken off jumps up by more than what is added.
 *
 * <p>Between edges a size never falls, since it grows with what it starts from; rounding keeps the order.
 */
final class StepsDown {
    private static final double DUST = 1e-9;

    private final Map<String, TreeMap<Double, Double>> jumps = new LinkedHashMap<>();
    private final Map<String, Dimension> dimensions = new LinkedHashMap<>();
    private final Names names;

    private StepsDown(Names names) {
        this.names = names;
    }

    static void check(SizeClause clause, Names names, Report report, String at) {
        StepsDown steps = new StepsDown(names);
        if (clause.of() instanceof Base.OfQuota of) {
            steps.add(of.quota(), 1);
        }
        clause.more().forEach(item -> steps.add(item.quota(), item.times()));
        clause.less().forEach(item -> steps.add(item.quota(), -item.times()));
        steps.jumps.forEach((by, edges) -> edges.forEach((edge, jump) -> {
            if (jump < -DUST) {
                Dimension dimension = names.dimension(clause.id()).orElse(Dimension.LENGTH);
                Dimension edgeDimension = steps.dimensions.getOrDefault(by, Dimension.LENGTH);
                Args args = Args.of("size", clause.id())
                        .with("by", by)
                        .with("at", edgeDimension.toAnswer(edge))
                        .with("unit", edgeDimension.answerUnit())
                        .with("down", dimension.widthToAnswer(-jump));
                report.warning("steps-down", at, args);
            }
        }));
    }

    private void add(Quota quota, double sign) {
        if (!(quota instanceof Quota.Banded banded) || !growsWithOpening(banded.by())) {
            return;
        }
        TreeMap<Double, Double> edges = jumps.computeIfAbsent(banded.by(), by -> new TreeMap<>());
        List<Quota.Band> bands = banded.bands();
        for (int i = 1; i < bands.size(); i++) {
            Amount edge = bands.get(i - 1).upTo();
            dimensions.put(banded.by(), edge.dimension());
            double jump =
                    bands.get(i).amount().value() - bands.get(i - 1).amount().value();
            edges.merge(edge.value(), sign * jump, Double::sum);
        }
    }

    /** Angles, bows and differences do not grow with an opening; widths, lengths and sizes do. */
    private boolean growsWithOpening(String name) {
        return names.isSize(name)
                || name.startsWith("fit.")
                || name.startsWith("opening.width.")
                || name.startsWith("opening.length.");
    }
}
