package quoin.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quoin.json.RulebookDocument;
import quoin.judge.Reason;
import quoin.measure.Uncertain;
import quoin.rulebook.BoundClause;
import quoin.rulebook.FigureSource;
import quoin.rulebook.Limits;
import quoin.rulebook.Rulebook;

/**
 * The published tables of the demo rulebook at both sides of every edge. All values as read in reprints, not in the
 * standards themselves: DIN 18202:2013-04 table 1 (betonkonkret.de), table 2 (beaplan.de), table 3 (a table of the
 * building trade's association); ISO 2768-1 (two reprinted code tables that agree), ISO 2768-2
 * (one). An edge belongs to the range that it
 * ends.
 */
class ToleranceTablesTest {
    private static final Rulebook SQUARE = rulebook();

    private static Rulebook rulebook() {
        try {
            return RulebookDocument.read(Files.readAllBytes(Run.DEMO.resolve("heron-square.json")))
                    .value()
                    .orElseThrow();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Limits limits(String clause, double nominal) {
        BoundClause bound = SQUARE.bounds().stream()
                .filter(b -> b.id().equals(clause))
                .findFirst()
                .orElseThrow();
        FigureSource figures = figure -> Optional.of(Uncertain.exact(nominal));
        return bound.bound(figures, Map.of());
    }

    private static double limit(String clause, double nominal) {
        Limits.Stated stated = (Limits.Stated) limits(clause, nominal);
        assertThat(stated.bound().atLeast()).isEqualTo(-stated.bound().atMost());
        return stated.bound().atMost();
    }

    private static void hasNone(String clause, double nominal) {
        Limits.NotStated none = (Limits.NotStated) limits(clause, nominal);
        assertThat(none.finding().reason()).contains(Reason.NOT_VERIFIED);
    }

    // DIN 18202 table 1, row 6, openings with finished reveals: up to 1 m 8, to 3 m 10, to 6 m 12; nothing beyond.
    @ParameterizedTest
    @CsvSource({"1, 8", "1000, 8", "1000.01, 10", "3000, 10", "3000.01, 12", "6000, 12"})
    void sizesOfOpenings(double nominal, double limit) {
        assertThat(limit("building-width", nominal)).isEqualTo(limit);
        assertThat(limit("building-length", nominal)).isEqualTo(limit);
        hasNone("building-width", 6000.01);
        hasNone("building-length", 0);
    }

    // DIN 18202 table 2: up to 0.5 m 3, to 1 m 6, to 3 m 8, to 6 m 12, to 15 m 16 (and 20 and 30 beyond, not shipped).
    @ParameterizedTest
    @CsvSource({
        "500, 3",
        "500.01, 6",
        "1000, 6",
        "1000.01, 8",
        "3000, 8",
        "3000.01, 12",
        "6000, 12",
        "6000.01, 16",
        "15000, 16"
    })
    void offsetsOfCorners(double nominal, double limit) {
        assertThat(limit("building-angle", nominal)).isEqualTo(limit);
        hasNone("building-angle", 15000.01);
    }

    // ISO 2768-1, lengths, class m: 0.1 to 6 mm, 0.2 to 30, 0.3 to 120, 0.5 to 400, 0.8 to 1000, 1.2 to 2000, 2 to
    // 4000.
    @ParameterizedTest
    @CsvSource({
        "6, 0.1",
        "6.01, 0.2",
        "30, 0.2",
        "30.01, 0.3",
        "120, 0.3",
        "120.01, 0.5",
        "400, 0.5",
        "400.01, 0.8",
        "1000, 0.8",
        "1000.01, 1.2",
        "2000, 1.2",
        "2000.01, 2",
        "4000, 2"
    })
    void lengthsOfTheWorkshop(double nominal, double limit) {
        assertThat(limit("workshop-length", nominal)).isEqualTo(limit);
        hasNone("workshop-length", 4000.01);
    }

    // ISO 2768-1, angles, classes f and m by the shorter leg: 1 degree to 10 mm, 30' to 50, 20' to 120, 10' to 400, 5'
    // beyond.
    @ParameterizedTest
    @CsvSource({"10, 60", "10.01, 30", "50, 30", "50.01, 20", "120, 20", "120.01, 10", "400, 10", "400.01, 5", "4000, 5"
    })
    void anglesOfTheWorkshop(double leg, double minutes) {
        // the document states nine digits of a degree
        assertThat(limit("workshop-angle", leg)).isEqualTo(Math.toRadians(minutes / 60), within(1e-11));
    }

    // ISO 2768-2:1989 (withdrawn in 2021), straightness, class L: 0.1 to 10 mm, 0.2 to 30, 0.4 to 100, 0.8 to 300, 1.2
    // to
    // 1000, 1.6 to 3000; one reprinted code table.
    @ParameterizedTest
    @CsvSource({
        "10, 0.1",
        "10.01, 0.2",
        "30, 0.2",
        "30.01, 0.4",
        "100, 0.4",
        "100.01, 0.8",
        "300, 0.8",
        "300.01, 1.2",
        "1000, 1.2",
        "1000.01, 1.6",
        "3000, 1.6"
    })
    void straightnessOfTheWorkshop(double length, double limit) {
        assertThat(limit("workshop-straight", length)).isEqualTo(limit);
        hasNone("workshop-straight", 3000.01);
    }

    /**
     * DIN 18202 table 3, row 6, finished walls: 3 mm at 0.1 m, 5 at 1 m, 10 at 4 m, linear between them, rounded to whole mm
     * (reprinted so at 0.6, 1.5, 2, 2.5, 3, 3.5 m: 4 6 7 8 8 9). Bands do not interpolate: never more than the table, and
     * never 2 mm less.
     */
    @Test
    void straightnessOfWallsIsNeverMoreThanTheTable() {
        double[][] printed = {{600, 4}, {1500, 6}, {2000, 7}, {2500, 8}, {3000, 8}, {3500, 9}};
        for (double[] entry : printed) {
            assertThat(Math.rint(linear(entry[0]))).isEqualTo(entry[1]);
        }
        for (int mm = 100; mm <= 4000; mm += 5) {
            double table = Math.rint(linear(mm));
            assertThat(limit("wall-straight", mm)).as(mm + " mm").isBetween(table - 1, table);
        }
    }

    private static double linear(double mm) {
        return mm <= 1000 ? 3 + 2 * (mm - 100) / 900 : 5 + 5 * (mm - 1000) / 3000;
    }
}
