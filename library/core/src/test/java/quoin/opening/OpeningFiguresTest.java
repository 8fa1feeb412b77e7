package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quoin.judge.Figure;
import quoin.measure.Estimate;
import quoin.measure.Extreme;
import quoin.measure.Uncertain;

/** The figures of an opening. */
class OpeningFiguresTest {
    private static final double D = Math.hypot(1500, 2400);

    private static Survey full() {
        return Survey.finished(
                Surveys.join(
                        Surveys.six(0.5, 1500, 2400, 1500, 2400, D, D),
                        Surveys.read("width@1/4", 0.5, 1499),
                        Surveys.read("length@1/2", 0.5, 2399),
                        Surveys.read("depth@head-left", 0.5, 140),
                        Surveys.read("depth@head-right", 0.5, 141),
                        Surveys.read("depth@foot-right", 0.5, 143, 145),
                        Surveys.read("depth@foot-left", 0.5, 142),
                        Surveys.read("depth@middle", 0.5, 138, 139),
                        Surveys.read("fall@head", 0.5, -3),
                        Surveys.read("fall@foot", 0.5, 2),
                        Surveys.behind("width@1/4", 0.5, 1498)),
                2);
    }

    @Test
    void everyFigureIsInTheCatalogueWithItsDimension() {
        Opening opening = Opening.of(full());
        Map<String, Estimate> survey = OpeningFigures.survey(opening, Side.HEAD);
        survey.putAll(OpeningFigures.againstNominal(opening, 1500, 2400));
        Gaps gaps =
                Gaps.of(opening, Uncertain.exact(1490), Uncertain.exact(2390)).orElseThrow();
        Map<String, Estimate> order = OpeningFigures.order(gaps);
        for (String name : survey.keySet()) {
            Figure figure = OpeningFigures.CATALOGUE.find(name).orElseThrow();
            assertThat(figure.stage().name()).as(name).isEqualTo("SURVEY");
        }
        for (String name : order.keySet()) {
            if (!name.contains("1/4") && !name.contains("1/2")) {
                assertThat(OpeningFigures.CATALOGUE.find(name)).as(name).isPresent();
            }
        }
        // Everything that one room can say of one opening is said here.
        long wanted = OpeningFigures.CATALOGUE.figures().stream()
                .filter(figure -> figure.stage().name().equals("SURVEY"))
                .count();
        // Nothing was read behind head and foot: their back is the front, and their splay 0.
        assertThat((long) survey.size()).isEqualTo(wanted);
    }

    /** Depths 140 + 144 - 141 - 142 = 1, the list read as its mean; u = 0.5 √(3 + 1/2). */
    @Test
    void twistAndDepth() {
        Map<String, Estimate> figures = OpeningFigures.survey(Opening.of(full()), Side.HEAD);
        assertThat(figures.get("opening.twist").value()).isCloseTo(1, within(1e-12));
        assertThat(Surveys.u(figures, "opening.twist")).isCloseTo(0.5 * Math.sqrt(3.5), within(1e-12));
        Extreme depth = (Extreme) figures.get("opening.depth.least");
        assertThat(depth.value()).isCloseTo(138.5, within(1e-12));
        assertThat(depth.governing().names()).containsExactly("depth@middle");
        assertThat(depth.parts()).hasSize(5);
    }

    /** Four depths 0 2 5 1: twist 0 + 5 - 2 - 1 = 2 (worked by hand), u = 2 times that of one. */
    @Test
    void twistOfFour() {
        Survey survey = Surveys.straight(List.of(
                Surveys.read("depth@head-left", 0.5, 100),
                Surveys.read("depth@head-right", 0.5, 102),
                Surveys.read("depth@foot-right", 0.5, 105),
                Surveys.read("depth@foot-left", 0.5, 101)));
        Map<String, Estimate> figures = OpeningFigures.survey(Opening.of(survey), Side.HEAD);
        assertThat(figures).containsOnlyKeys("opening.twist", "opening.depth.least");
        assertThat(figures.get("opening.twist").value()).isEqualTo(2);
        assertThat(Surveys.u(figures, "opening.twist")).isCloseTo(1, within(1e-12));
    }

    @Test
    void theFallIsThatOfTheRoller() {
        Opening opening = Opening.of(full());
        assertThat(OpeningFigures.survey(opening, Side.HEAD).get("roller.fall").value())
                .isEqualTo(-3);
        assertThat(OpeningFigures.survey(opening, Side.FOOT).get("roller.fall").value())
                .isEqualTo(2);
    }

    /** What people go by: the least number on the paper. */
    @Test
    void theRuleOfTheTrade() {
        Map<String, Estimate> figures = OpeningFigures.survey(Opening.of(full()), Side.HEAD);
        assertThat(figures.get("fit.rule.width").value()).isEqualTo(1498);
        assertThat(((Extreme) figures.get("fit.rule.width")).governing().names())
                .containsExactly("width@1/4/back");
        assertThat(((Extreme) figures.get("fit.rule.width")).parts()).hasSize(4);
        assertThat(figures.get("fit.rule.length").value()).isEqualTo(2399);
    }

    /** A skewed opening: the least reading is 1500 everywhere, and what goes in is 60 mm less. */
    @Test
    void theRuleOfTheTradeErrsWhereAnOpeningLeans() {
        Opening opening = Surveys.Quad.level(1500, 1560, 2400, 60, 2400).opening(0.5);
        Map<String, Estimate> figures = OpeningFigures.survey(opening, Side.HEAD);
        assertThat(figures.get("fit.rule.width").value()).isCloseTo(1500, within(1e-9));
        assertThat(figures.get("fit.width").value()).isCloseTo(1440, within(1e-5));
    }

    @Test
    void widthsAtEveryTouchedPlace() {
        Extreme least = OpeningFigures.leastWidth(Opening.of(full()));
        assertThat(least.parts())
                .flatExtracting(Extreme.Part::names)
                .contains("width@head", "width@foot", "width@1/4", "width@1/4/back");
        assertThat(least.governing().names()).containsExactly("width@1/4/back");
        Extreme length = OpeningFigures.leastLength(Opening.of(full()));
        assertThat(length.parts())
                .flatExtracting(Extreme.Part::names)
                .contains("length@left", "length@right", "length@1/2");
        assertThat(length.governing().names()).containsExactly("length@1/2");
    }

    /** A bow into the room between the corners of the frame has a gap of its own; one outwards has none. */
    @Test
    void gapsAtTouchedPoints() {
        for (double bow : new double[] {4, -4}) {
            List<Reading> readings = Surveys.join(
                    Surveys.six(0.3, 1500, 2400, 1500, 2400, D, D), Surveys.read("bow@right:1/2", 0.1, bow));
            Opening opening = Opening.of(Survey.finished(readings, 6));
            Gaps gaps = Gaps.of(opening, Uncertain.exact(1480), Uncertain.exact(2370))
                    .orElseThrow();
            Map<String, Uncertain> single = Gaps.single(gaps);
            if (bow > 0) {
                assertThat(single).containsKey("gap.right@1/2");
                assertThat(single.get("gap.right@1/2").value())
                        .isLessThan(single.get("gap.right@head-right").value());
                assertThat(Gaps.least(gaps).governing().names()).contains("gap.right@1/2");
            } else {
                assertThat(single).doesNotContainKey("gap.right@1/2").hasSize(8);
            }
        }
    }

    @Test
    void names() {
        for (Side side : Side.values()) {
            assertThat(Side.find(side.text())).contains(side);
        }
        for (Corner corner : Corner.values()) {
            assertThat(Corner.find(corner.text())).contains(corner);
            assertThat(corner.opposite().opposite()).isEqualTo(corner);
            assertThat(corner.next().previous()).isEqualTo(corner);
        }
        for (Plane plane : Plane.values()) {
            assertThat(Plane.find(plane.text())).contains(plane);
        }
        for (HeadTowards towards : HeadTowards.values()) {
            assertThat(HeadTowards.find(towards.text())).contains(towards);
        }
        assertThat(Side.find("top")).isEmpty();
        assertThat(Corner.find("top")).isEmpty();
        assertThat(Plane.find("middle")).isEmpty();
        assertThat(HeadTowards.find("door")).isEmpty();
        assertThat(new Cannot(Span.parse("width@1/2"), "opener").because()).isEqualTo("opener");
        assertThat(new Obstacle("handle", Side.FOOT, 1, 2, 3, 4, 5).on()).isEqualTo(Side.FOOT);
        assertThat(new Moving("sash", Side.HEAD, "in", 1, 400, "open").hinge()).isEqualTo(Side.HEAD);
        assertThat(full().has(Span.parse("width@head"))).isTrue();
        assertThat(full().has(Span.parse("width@1/3"))).isFalse();
    }
}
