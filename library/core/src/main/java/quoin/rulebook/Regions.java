package quoin.rulebook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;

/**
 * A size as a function of figures: the figures' lines are cut, and in each box between the cuts one piece holds.
 *
 * <p>Immutable.
 */
final class Regions {
    private final List<String> axes;
    private final long[][] cuts;
    private final Piece[] pieces;

    private Regions(List<String> axes, long[][] cuts, Piece[] pieces) {
        this.axes = axes;
        this.cuts = cuts;
        this.pieces = pieces;
    }

    /** One piece, whatever the figures. */
    static Regions everywhere(Piece piece) {
        return new Regions(List.of(), new long[0][], new Piece[] {piece});
    }

    /** The figure itself. */
    static Regions figure(String name) {
        return new Regions(List.of(name), new long[][] {{}}, new Piece[] {Piece.Chain.of(name)});
    }

    /** The figures, sorted by name. */
    List<String> axes() {
        return axes;
    }

    int count() {
        return pieces.length;
    }

    Piece piece(int box) {
        return pieces[box];
    }

    Box box(int index) {
        return new Box(this, index);
    }

    /** One box. */
    record Box(Regions of, int index) {
        /** How many boxes lie below this one along an axis. */
        int place(int axis) {
            int rest = index;
            for (int i = of.axes.size() - 1; i > axis; i--) {
                rest /= of.cuts[i].length + 1;
            }
            return rest % (of.cuts[axis].length + 1);
        }

        /** The cut below the box; the end of the line where there is none, and along a figure that does not matter. */
        long low(String figure) {
            int axis = of.axes.indexOf(figure);
            int place = axis < 0 ? 0 : place(axis);
            return place == 0 ? Cut.BELOW_ALL : of.cuts[axis][place - 1];
        }

        long high(String figure) {
            int axis = of.axes.indexOf(figure);
            int place = axis < 0 ? 0 : place(axis);
            return axis < 0 || place == of.cuts[axis].length ? Cut.ABOVE_ALL : of.cuts[axis][place];
        }

        /** The box next above along an axis; empty where this is the last. */
        Optional<Box> above(int axis) {
            int stride = 1;
            for (int i = axis + 1; i < of.axes.size(); i++) {
                stride *= of.cuts[i].length + 1;
            }
            return place(axis) == of.cuts[axis].length ? Optional.empty() : Optional.of(new Box(of, index + stride));
        }

        Piece piece() {
            return of.pieces[index];
        }
    }

    /** The pieces of several functions in one box become one. */
    @FunctionalInterface
    interface Joining {
        Piece of(List<Piece> pieces, Box box);
    }

    /** Several functions laid over each other, cut wherever one of them is; empty where that makes too many boxes. */
    static Optional<Regions> join(List<Regions> parts, Meter meter, Joining joining) {
        return lay(parts, Map.of(), meter).map(over -> over.fill(joining));
    }

    /** Each piece made another one, without a new cut; empty where there are too many boxes. */
    Optional<Regions> each(Meter meter, UnaryOperator<Piece> change) {
        if (!meter.take(pieces.length)) {
            return Optional.empty();
        }
        Piece[] changed = new Piece[pieces.length];
        for (int i = 0; i < changed.length; i++) {
            changed[i] = change.apply(pieces[i]);
        }
        return Optional.of(new Regions(axes, cuts, changed));
    }

    /** What becomes of a piece between two cuts of its own values. */
    @FunctionalInterface
    interface Splitting {
        Piece of(Piece piece, int between);
    }

    /**
     * This function cut at values of its own, which ascend; refused pieces stay.
     *
     * @param splitting what becomes of a piece with so many of the cuts below it
     */
    Optional<Regions> split(long[] own, Meter meter, Splitting splitting) {
        Map<String, SortedSet<Long>> more = new TreeMap<>();
        for (int i = 0; i < pieces.length; i++) {
            if (pieces[i] instanceof Piece.Chain chain) {
                Box box = box(i);
                long low = box.low(chain.figure());
                long high = box.high(chain.figure());
                for (long cut : own) {
                    long back = chain.back(cut);
                    if (back > low && back < high) {
                        more.computeIfAbsent(chain.figure(), figure -> new TreeSet<>())
                                .add(back);
                    }
                }
            }
        }
        return lay(List.of(this), more, meter)
                .map(over -> over.fill((all, box) -> {
                    Piece piece = all.get(0);
                    if (piece instanceof Piece.Constant constant) {
                        return splitting.of(piece, Cut.countBelow(own, constant.value()));
                    }
                    return piece instanceof Piece.Chain chain
                            ? splitting.of(piece, below(chain, own, box.low(chain.figure())))
                            : piece;
                }));
    }

    private static int below(Piece.Chain chain, long[] own, long low) {
        int count = 0;
        while (count < own.length && chain.back(own[count]) <= low) {
            count++;
        }
        return count;
    }

    /** The same function without the cuts on whose two sides the same pieces hold. */
    Regions plain() {
        Regions plain = this;
        for (int axis = axes.size() - 1; axis >= 0; axis--) {
            plain = plain.plain(axis);
        }
        return plain;
    }

    private Regions plain(int axis) {
        boolean[] needed = new boolean[cuts[axis].length];
        for (int i = 0; i < pieces.length && needed.length > 0; i++) {
            Box box = box(i);
            int place = box.place(axis);
            Optional<Box> above = box.above(axis);
            if (above.isPresent()
                    && !needed[place]
                    && !box.piece().equals(above.get().piece())) {
                needed[place] = true;
            }
        }
        long[] kept = kept(cuts[axis], needed);
        boolean used = kept.length > 0 || isFollowed(axes.get(axis));
        if (used && kept.length == needed.length) {
            return this;
        }
        List<String> names = new ArrayList<>(axes);
        List<long[]> lines = new ArrayList<>(Arrays.asList(cuts));
        if (used) {
            lines.set(axis, kept);
        } else {
            names.remove(axis);
            lines.remove(axis);
        }
        return new Over(names, lines.toArray(new long[0][]), List.of(this)).fill((all, box) -> all.get(0));
    }

    private boolean isFollowed(String axis) {
        for (Piece piece : pieces) {
            if (piece.follows(axis)) {
                return true;
            }
        }
        return false;
    }

    private static long[] kept(long[] cuts, boolean[] needed) {
        long[] kept = new long[cuts.length];
        int count = 0;
        for (int i = 0; i < cuts.length; i++) {
            if (needed[i]) {
                kept[count++] = cuts[i];
            }
        }
        return Arrays.copyOf(kept, count);
    }

    private static SortedSet<Long> sorted(long[] cuts) {
        TreeSet<Long> set = new TreeSet<>();
        for (long cut : cuts) {
            set.add(cut);
        }
        return set;
    }

    /** The part whose boxes are those of all, where no other part has a cut. */
    private static Optional<Regions> frame(List<Regions> parts) {
        Regions frame = parts.get(0);
        for (Regions part : parts) {
            if (!part.axes.isEmpty() && part != frame) {
                if (!frame.axes.isEmpty()) {
                    return Optional.empty();
                }
                frame = part;
            }
        }
        return Optional.of(frame);
    }

    private static Optional<Over> lay(List<Regions> parts, Map<String, SortedSet<Long>> more, Meter meter) {
        Optional<Regions> frame = more.isEmpty() ? frame(parts) : Optional.empty();
        if (frame.isPresent()) {
            Regions as = frame.get();
            return meter.take(as.count()) ? Optional.of(new Over(as.axes, as.cuts, parts)) : Optional.empty();
        }
        Map<String, SortedSet<Long>> lines = new TreeMap<>();
        for (Regions part : parts) {
            for (int i = 0; i < part.axes.size(); i++) {
                lines.computeIfAbsent(part.axes.get(i), name -> new TreeSet<>()).addAll(sorted(part.cuts[i]));
            }
        }
        more.forEach((name, cuts) ->
                lines.computeIfAbsent(name, figure -> new TreeSet<>()).addAll(cuts));
        long boxes = 1;
        for (SortedSet<Long> line : lines.values()) {
            boxes = StrictMath.min(boxes * (line.size() + 1), Meter.MOST_OF_ONE + 1);
        }
        return meter.take(boxes) ? Optional.of(Over.of(lines, parts)) : Optional.empty();
    }

    /** Functions laid over each other: for each new box, which box of each of them it lies in. */
    private static final class Over {
        private final Regions frame;
        private final List<Regions> parts;
        /** For each part and each axis of the frame, what each place adds to the part's index. */
        private final int[][][] shares;

        Over(List<String> axes, long[][] cuts, List<Regions> parts) {
            int boxes = 1;
            for (long[] line : cuts) {
                boxes *= line.length + 1;
            }
            this.frame = new Regions(axes, cuts, new Piece[boxes]);
            this.parts = parts;
            this.shares = new int[parts.size()][][];
            for (int p = 0; p < shares.length; p++) {
                shares[p] = shares(parts.get(p), axes, cuts);
            }
        }

        static Over of(Map<String, SortedSet<Long>> lines, List<Regions> parts) {
            long[][] cuts = new long[lines.size()][];
            int axis = 0;
            for (SortedSet<Long> line : lines.values()) {
                cuts[axis++] = line.stream().mapToLong(Long::longValue).toArray();
            }
            return new Over(List.copyOf(lines.keySet()), cuts, parts);
        }

        private static int[][] shares(Regions part, List<String> axes, long[][] cuts) {
            int[][] shares = new int[axes.size()][];
            for (int i = 0; i < shares.length; i++) {
                shares[i] = new int[cuts[i].length + 1];
                int axis = part.axes.indexOf(axes.get(i));
                int stride = 1;
                for (int k = axis + 1; axis >= 0 && k < part.axes.size(); k++) {
                    stride *= part.cuts[k].length + 1;
                }
                for (int place = 0; axis >= 0 && place < shares[i].length; place++) {
                    long low = place == 0 ? Cut.BELOW_ALL : cuts[i][place - 1];
                    shares[i][place] = stride * Cut.countUpTo(part.cuts[axis], low);
                }
            }
            return shares;
        }

        Regions fill(Joining joining) {
            int[] place = new int[frame.axes.size()];
            for (int box = 0; box < frame.pieces.length; box++) {
                List<Piece> pieces = new ArrayList<>(parts.size());
                for (int p = 0; p < parts.size(); p++) {
                    int index = 0;
                    for (int axis = 0; axis < place.length; axis++) {
                        index += shares[p][axis][place[axis]];
                    }
                    pieces.add(parts.get(p).pieces[index]);
                }
                frame.pieces[box] = joining.of(pieces, frame.box(box));
                step(place);
            }
            return frame;
        }

        private void step(int[] place) {
            for (int axis = place.length - 1; axis >= 0; axis--) {
                place[axis]++;
                if (place[axis] <= frame.cuts[axis].length) {
                    return;
                }
                place[axis] = 0;
            }
        }
    }
}
