package quoin.benchmarks;

import java.util.List;
import quoin.measure.Extreme;
import quoin.measure.Uncertain;
import quoin.opening.Gaps;
import quoin.opening.Held;
import quoin.opening.Opening;
import quoin.opening.Survey;

/** A frame turned freely to where it fits best, and the least gap there with its doubt, in an opening that is known. */
final class Turned implements Work {
    static final Uncertain WIDTH = Uncertain.exact(2390);
    static final Uncertain LENGTH = Uncertain.exact(1488);

    private final Opening[] openings;

    Turned(List<Survey> surveys) {
        openings = surveys.stream().map(Opening::of).toArray(Opening[]::new);
    }

    Extreme least(int time) {
        return Gaps.least(Gaps.of(openings[time % openings.length], Held.FREELY, WIDTH, LENGTH)
                .orElseThrow());
    }

    @Override
    public double once(int time) {
        Extreme.Part governing = least(time).governing();
        return governing.value().value() + governing.value().standardUncertainty();
    }
}
