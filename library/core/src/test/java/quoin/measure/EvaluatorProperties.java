package quoin.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** The evaluator against the immutable numbers, operation by operation. */
class EvaluatorProperties {
    private static final int ROWS = 6;

    private static Influences influences(int n) {
        List<Influence> list = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            list.add(Influence.normal("i" + i, 0.1 + 0.01 * i));
        }
        return Influences.of(list);
    }

    private static boolean same(Evaluator evaluator, int row, Uncertain number) {
        return evaluator.number(row).equals(number) && evaluator.isFirstOrderBlind(row) == number.isFirstOrderBlind();
    }

    /** Values and contributions are the same to the bit; u to 1e-12, since its squares are added in another order. */
    @Property
    void everyOperationGivesWhatTheImmutableOneGives(
            @ForAll @Size(min = 1, max = 40) List<@IntRange(min = 0, max = 10_000) Integer> program,
            @ForAll @IntRange(min = 3, max = 140) int size) {
        Influences basis = influences(size);
        Evaluator evaluator = new Evaluator(basis, ROWS);
        Uncertain[] rows = new Uncertain[ROWS];
        for (int i = 0; i < ROWS; i++) {
            rows[i] = Uncertain.ofReading(10 + i, basis, i * size / ROWS, 1, size - 1, 0.5 * i);
            evaluator.reading(i, 10 + i, i * size / ROWS, 1, size - 1, 0.5 * i);
        }
        for (int code : program) {
            int into = code % ROWS;
            int a = code / ROWS % ROWS;
            int b = code / ROWS / ROWS % ROWS;
            try {
                rows[into] = step(code % 7, evaluator, rows, into, a, b, basis);
            } catch (ArithmeticException e) {
                return;
            }
            assertThat(same(evaluator, into, rows[into]))
                    .as("row %s after %s", into, code)
                    .isTrue();
            assertThat(evaluator.standardUncertainty(into))
                    .isCloseTo(
                            rows[into].standardUncertainty(), within(1e-12 * (1 + rows[into].standardUncertainty())));
            assertThat(evaluator.covariance(into, a))
                    .isCloseTo(
                            rows[into].covariance(rows[a]),
                            within(1e-12 * (1 + rows[into].standardUncertainty() * rows[a].standardUncertainty())));
        }
    }

    private static Uncertain step(
            int operation, Evaluator evaluator, Uncertain[] rows, int into, int a, int b, Influences basis) {
        switch (operation) {
            case 0 -> {
                evaluator.plus(into, a, b);
                return rows[a].plus(rows[b]);
            }
            case 1 -> {
                evaluator.minus(into, a, b);
                return rows[a].minus(rows[b]);
            }
            case 2 -> {
                evaluator.times(into, a, b);
                return rows[a].times(rows[b]);
            }
            case 3 -> {
                Uncertain quotient = rows[a].dividedBy(rows[b]);
                evaluator.dividedBy(into, a, b);
                return quotient;
            }
            case 4 -> {
                evaluator.linear(into, -2, a, 3);
                return rows[a].times(-2).plus(3);
            }
            case 5 -> {
                evaluator.least(into, a, b);
                return rows[a].value() <= rows[b].value() ? rows[a] : rows[b];
            }
            default -> {
                evaluator.reading(into, 7, into % basis.size(), 2, basis.size() - 1, 1);
                return Uncertain.ofReading(7, basis, into % basis.size(), 2, basis.size() - 1, 1);
            }
        }
    }

    @Property
    void theCosineRuleIsTheSame(
            @ForAll @IntRange(min = 50, max = 100) int a,
            @ForAll @IntRange(min = 50, max = 100) int b,
            @ForAll @IntRange(min = 51, max = 99) int c,
            @ForAll @IntRange(min = 4, max = 140) int size) {
        Influences basis = influences(size);
        Evaluator evaluator = new Evaluator(basis, 4);
        double[] sides = {a, b, c};
        Uncertain[] numbers = new Uncertain[3];
        for (int i = 0; i < 3; i++) {
            numbers[i] = Uncertain.ofReading(sides[i], basis, i * size / 4, 1, size - 1, sides[i]);
            evaluator.reading(i, 1, size / 2, 1, size - 2, 1);
            evaluator.set(i, numbers[i]);
            assertThat(evaluator.standardUncertainty(i)).isEqualTo(numbers[i].standardUncertainty());
        }
        evaluator.cosineRule(3, 0, 1, 2);
        assertThat(same(evaluator, 3, Uncertain.cosineRule(numbers[0], numbers[1], numbers[2])))
                .isTrue();
    }

    @Example
    void whatIsNotFiniteIsRefused() {
        Evaluator evaluator = new Evaluator(influences(2), 3);
        assertThatThrownBy(() -> evaluator.reading(0, Double.NaN, 0, 1, 1, 1))
                .hasMessage("reading must be finite, got NaN with 0.1 and 0.11");
        evaluator.reading(0, 1, 0, 1, 1, 1);
        assertThatThrownBy(() -> evaluator.dividedBy(2, 0, 1)).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> evaluator.cosineRule(2, 0, 0, 1)).hasMessageContaining("make no open triangle");
        assertThatThrownBy(() -> new Evaluator(influences(2), 0)).hasMessageContaining("number of rows");
        assertThatThrownBy(() -> evaluator.set(0, Uncertain.of(1, Influence.normal("other", 1))))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> evaluator.value(3)).isInstanceOf(IndexOutOfBoundsException.class);
    }
}
