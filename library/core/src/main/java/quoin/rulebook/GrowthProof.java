package quoin.rulebook;

import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import quoin.judge.Args;
import quoin.measure.Dimension;

/**
 * A larger opening never gives a smaller size.
 *
 * <p>Inside a box a size never falls: it is a figure, to which is added and which is rounded. So it is enough to look at
 * the pieces on the two sides of each cut, along every figure that grows with the opening.
 */
final class GrowthProof {
    private final Rulebook rulebook;
    private final Mapping mapping;
    private final Names names;
    private final Report report;
    /** What was said already: the size, the figure and the value where it steps down. */
    private final Set<String> said = new HashSet<>();

    GrowthProof(Proving proving) {
        this.rulebook = proving.rulebook();
        this.mapping = proving.mapping();
        this.names = proving.names();
        this.report = proving.report();
    }

    void check() {
        for (String id : mapping.mapped()) {
            int index = names.index(id);
            SizeClause clause = rulebook.sizes().get(index);
            mapping.cases(id).forEach((choices, regions) -> check(clause, "/sizes/" + index, choices, regions));
        }
    }

    private void check(SizeClause clause, String at, Map<String, String> choices, Regions regions) {
        for (int axis = 0; axis < regions.axes().size(); axis++) {
            if (!growsWithOpening(regions.axes().get(axis))) {
                continue;
            }
            for (int i = 0; i < regions.count(); i++) {
                Regions.Box below = regions.box(i);
                Optional<Regions.Box> above = decidedAbove(below, axis);
                if (!(below.piece() instanceof Piece.Refused) && above.isPresent()) {
                    step(clause, at, choices, regions.axes().get(axis), below, above.get());
                }
            }
        }
    }

    /** Angles, bows and differences do not grow with an opening; widths and lengths do, and what they fall short to. */
    private static boolean growsWithOpening(String axis) {
        String figure = axis.startsWith("shortfall(") ? axis.substring("shortfall(".length()) : axis;
        return figure.startsWith("fit.") || figure.startsWith("opening.width.") || figure.startsWith("opening.length.");
    }

    /** The next box above where there is a size; where there is none nothing can be smaller. */
    private static Optional<Regions.Box> decidedAbove(Regions.Box box, int axis) {
        Optional<Regions.Box> above = box.above(axis);
        while (above.isPresent() && above.get().piece() instanceof Piece.Refused) {
            above = above.get().above(axis);
        }
        return above;
    }

    private void step(
            SizeClause clause,
            String at,
            Map<String, String> choices,
            String axis,
            Regions.Box below,
            Regions.Box above) {
        long down = down(axis, below, above);
        long cut = above.low(axis);
        String where = " " + axis + " " + cut;
        boolean inherited = clause.of() instanceof Base.OfFigure of && said.contains(of.figure() + where);
        if (down <= 0 || !said.add(clause.id() + where) || inherited) {
            return;
        }
        Dimension dimension = names.dimension(clause.id()).orElse(Dimension.LENGTH);
        Args args = Args.of("size", clause.id())
                .with("by", axis)
                .with("at", Exact.toAnswer(Cut.value(cut)))
                .with("unit", mapping.dimension(axis).answerUnit())
                .with("down", Exact.toAnswer(down))
                .with("downUnit", dimension.answerUnit());
        if (isFixed(below.piece(), axis) && isFixed(above.piece(), axis)) {
            args = args.with("before", Exact.toAnswer(Cut.valueOf(last(below, axis))))
                    .with("after", Exact.toAnswer(Cut.valueOf(first(above, axis))));
        }
        report.warning("steps-down", at, Limiting.with(args, choices));
    }

    /** By how much the size is smaller above the cut, at its worst; 0 or less where it is not. */
    private static long down(String axis, Regions.Box below, Regions.Box above) {
        if (isFixed(below.piece(), axis) && isFixed(above.piece(), axis)) {
            return Cut.valueOf(last(below, axis)) - Cut.valueOf(first(above, axis));
        }
        Difference difference = Difference.between(below.piece(), above.piece(), above);
        return difference.stretches().stream()
                .mapToLong(stretch -> -Cut.valueOf(StrictMath.min(stretch.first(), stretch.last())))
                .filter(down -> difference.kind() == Difference.Kind.CHANGED)
                .max()
                .orElse(0);
    }

    /** Whether a piece has one value at a cut of an axis. */
    private static boolean isFixed(Piece piece, String axis) {
        return piece instanceof Piece.Constant || piece.follows(axis);
    }

    private static long last(Regions.Box box, String axis) {
        return box.piece() instanceof Piece.Chain chain
                ? chain.at(Cut.lastBelow(box.high(axis)))
                : Cut.point(((Piece.Constant) box.piece()).value());
    }

    private static long first(Regions.Box box, String axis) {
        return box.piece() instanceof Piece.Chain chain
                ? chain.at(Cut.firstAbove(box.low(axis)))
                : Cut.point(((Piece.Constant) box.piece()).value());
    }
}
