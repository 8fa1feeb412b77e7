package quoin.benchmarks;

import java.util.ArrayList;
import java.util.List;
import quoin.fixing.SetOut;
import quoin.fixing.Spacing;

/** The same sides by the library: the fewest holes, as even as can be, with what proves it. */
final class SetOutByRules implements Work {
    private final List<Spacing.Stretch> barred = new ArrayList<>();
    private final Spacing.Ends ends = new Spacing.Ends(SetOutByGreedy.AIM, 50, 150);
    private final Spacing.Pitch pitch = new Spacing.Pitch(60, SetOutByGreedy.MOST_PITCH);

    SetOutByRules() {
        for (double[] stretch : SetOutByGreedy.BARRED) {
            barred.add(new Spacing.Stretch(stretch[0], stretch[1], "cable"));
        }
    }

    @Override
    public double once(int time) {
        double sum = 0;
        for (double side : SetOutByGreedy.SIDES) {
            SetOut found = Spacing.of(side - (time & 3), ends, pitch, 1)
                    .withBarred(barred)
                    .setOut();
            if (found instanceof SetOut.Holes holes) {
                for (double at : holes.atMm()) {
                    sum += at;
                }
            }
        }
        return sum;
    }
}
