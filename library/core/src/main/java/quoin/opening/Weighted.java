package quoin.opening;

import java.util.List;
import quoin.measure.Uncertain;

/** Weighted sums of numbers with doubt. */
final class Weighted {
    private Weighted() {}

    static Uncertain sum(double[] weights, List<Uncertain> numbers) {
        double value = 0;
        for (int i = 0; i < weights.length; i++) {
            value += weights[i] * numbers.get(i).value();
        }
        return Uncertain.combine(value, weights, numbers);
    }
}
