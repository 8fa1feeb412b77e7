package quoin.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quoin.judge.Problem;

/**
 * A published table of fits as a rulebook. Standard: ISO 286-1:2010, tables 1 to 5, as other programs that cite it reprint
 * it: IT6 and IT7 in &micro;m for 0&ndash;3, 3&ndash;6, 6&ndash;10, 10&ndash;18, 18&ndash;30, 30&ndash;50,
 * 50&ndash;80 mm, hole H (lower deviation 0), shaft g (upper deviation; those for 3 to 18 and 30 to 50 mm from memory).
 * Two fits from the same source: 25 mm H7/g6 clears 7 to 41 &micro;m, 52.8 mm H7/g6 clears 10 to 59 &micro;m. Exact.
 */
class FitsTest {
    private static final Rulebook FITS = Sample.with(
            Sample.size("hole.least", "fit.width"),
            Sample.size("hole.most", "fit.width").withMore(Sample.item(table(10, 12, 15, 18, 21, 25, 30))),
            Sample.size("shaft.most", "fit.width").withLess(Sample.item(table(2, 4, 5, 6, 7, 9, 10))),
            Sample.size("shaft.least", "shaft.most").withLess(Sample.item(table(6, 8, 9, 11, 13, 16, 19))));

    private static Quota.Banded table(double... microns) {
        double[] tops = {3, 6, 10, 18, 30, 50, 80};
        double[] pairs = new double[2 * tops.length];
        for (int i = 0; i < tops.length; i++) {
            pairs[2 * i] = tops[i];
            pairs[2 * i + 1] = microns[i] / 1000;
        }
        return Sample.bands("fit.width", pairs);
    }

    private static Sizes sizes(double nominal) {
        return Sample.decide(FITS, RandomRules.known(Map.of("fit.width", nominal, "fit.length", 100.0)));
    }

    @ParameterizedTest
    @CsvSource({"25, 7, 41", "52.8, 10, 59"})
    void anH7G6FitClears(double nominal, double least, double most) {
        Sizes sizes = sizes(nominal);
        double micron = 1e-3;
        assertThat(Sample.mm(sizes, "hole.least") - Sample.mm(sizes, "shaft.most"))
                .isCloseTo(least * micron, within(1e-12));
        assertThat(Sample.mm(sizes, "hole.most") - Sample.mm(sizes, "shaft.least"))
                .isCloseTo(most * micron, within(1e-12));
    }

    /** 10.0 mm is the top of 6 to 10, 10.001 mm lies in 10 to 18: the cut of the map is just above 10 mm. */
    @Test
    void theBoundarySizeBelongsToTheRangeBelow() {
        assertThat(Sample.mm(sizes(10.0), "hole.most")).isCloseTo(10.015, within(1e-12));
        assertThat(Sample.mm(sizes(10.001), "hole.most")).isCloseTo(10.019, within(1e-12));
        Regions regions =
                MappingProperties.mapping(FITS).find("hole.most", Map.of()).orElseThrow();
        assertThat(regions.count())
                .as("seven ranges, and nothing on either side")
                .isEqualTo(9);
        long edge = Cut.after(10 * Exact.ONE);
        assertThat(regions.box(3).high("fit.width")).isEqualTo(edge);
        assertThat(regions.box(3).piece()).isEqualTo(Piece.Chain.of("fit.width").plus(150_000));
        assertThat(regions.box(4).low("fit.width")).isEqualTo(edge);
        assertThat(regions.box(4).piece()).isEqualTo(Piece.Chain.of("fit.width").plus(180_000));
    }

    /** A shaft is smaller above each edge of the table, and its least size is so by both tables. */
    @Test
    void everyEdgeOfTheShaftIsAWitness() {
        List<Problem> down = Lint.problems(FITS, Sample.CATALOGUE, List.of()).stream()
                .filter(problem -> problem.code().equals("steps-down"))
                .toList();
        assertThat(down)
                .filteredOn(problem -> problem.pointer().equals("/sizes/4"))
                .extracting(problem -> problem.args().asMap().get("at"))
                .containsExactly(3.0, 6.0, 10.0, 18.0, 30.0, 50.0);
        assertThat(down).allSatisfy(problem -> assertThat(problem.pointer()).isIn("/sizes/4", "/sizes/5"));
    }
}
