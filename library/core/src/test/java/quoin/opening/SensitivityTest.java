package quoin.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quoin.measure.Dimension;
import quoin.measure.Doubt;
import quoin.measure.Estimate;
import quoin.measure.Extreme;
import quoin.measure.Uncertain;

/**
 * The sensitivity of every figure to every reading against what happens when that reading changes by 0.02 mm. The opening
 * is crooked enough that one gap holds each side. What the two differ by is second order: 0.01 mm over 500 mm.
 */
class SensitivityTest {
    private static final double STEP = 0.01;
    private static final double CLOSE = 2e-4;
    private static final Surveys.Quad QUAD = Surveys.Quad.level(1500, 1511, 2409, -7, 2396);

    @Test
    void straightSides() {
        compare(QUAD.six(0.5), Double.NaN, Finish.FINISHED);
    }

    @Test
    void sidesThatMayBulge() {
        List<Reading> readings = Surveys.join(
                QUAD.six(0.5),
                Surveys.read("width@1/4", 0.5, QUAD.across(Side.LEFT, 0.25)),
                Surveys.read("cross@head-left:right:600 mm", 0.5, cross()),
                Surveys.read("bow@foot:1/3", 0.5, 0));
        compare(readings, 3, Finish.FINISHED);
    }

    @Test
    void bareSides() {
        Finish bare = new Finish(
                Finish.State.BARE,
                Map.of(
                        Side.LEFT, new Finish.Still(12, Doubt.standard(1, Dimension.LENGTH)),
                        Side.FOOT, new Finish.Still(30, Doubt.standard(1, Dimension.LENGTH))));
        compare(QUAD.six(0.5), Double.NaN, bare);
    }

    @Test
    void aBackOfItsOwn() {
        List<Reading> readings = new ArrayList<>(QUAD.six(0.5));
        double[] back = Surveys.Quad.level(1494, 1501, 2399, -12, 2390).exact();
        for (int i = 0; i < 6; i++) {
            readings.add(Surveys.behind(Surveys.SIX.get(i), 0.5, back[i]));
        }
        compare(readings, Double.NaN, Finish.FINISHED);
    }

    @Test
    void readingsAcrossTheBack() {
        List<Reading> readings = Surveys.join(
                QUAD.six(0.5),
                Surveys.behind("width@head", 0.5, 1495),
                Surveys.behind("width@1/3", 0.5, 1496),
                Surveys.behind("length@right", 0.5, 2405));
        compare(readings, 6, Finish.FINISHED);
    }

    private static double cross() {
        double length = Surveys.far(QUAD.b(), QUAD.c());
        return Surveys.far(QUAD.a(), QUAD.on(Side.RIGHT, 600 / length));
    }

    private static void compare(List<Reading> readings, double straight, Finish finish) {
        Survey survey = new Survey(readings, straight, finish);
        Map<String, Uncertain> figures = figures(survey);
        assertThat(figures).hasSizeGreaterThan(25);
        for (int i = 0; i < readings.size(); i++) {
            Map<String, Uncertain> more = figures(changed(survey, i, STEP));
            Map<String, Uncertain> less = figures(changed(survey, i, -STEP));
            int at = i;
            figures.forEach((name, figure) -> {
                Uncertain up = more.get(name);
                Uncertain down = less.get(name);
                if (up != null && down != null) {
                    double slope = (up.value() - down.value()) / (2 * STEP);
                    double scale = name.contains("corner") ? 1e-3 : 1;
                    assertThat(sensitivity(figure, survey, at))
                            .as("%s to %s", name, readings.get(at).name())
                            .isCloseTo(slope, within(CLOSE * scale));
                }
            });
        }
    }

    private static double sensitivity(Uncertain figure, Survey survey, int entry) {
        Uncertain value = survey.observed(entry).get(0);
        return figure.sensitivity(value.influences().get(0));
    }

    private static Survey changed(Survey survey, int entry, double by) {
        List<Reading> readings = new ArrayList<>(survey.readings());
        Reading old = readings.get(entry);
        List<Double> values = old.values().stream().map(value -> value + by).toList();
        readings.set(entry, new Reading(old.id(), old.of(), old.in(), values, old.by()));
        return new Survey(readings, survey.straightWithinMm(), survey.finish());
    }

    /** All figures of the survey and of a frame, each part of a least by its name. */
    private static Map<String, Uncertain> figures(Survey survey) {
        Opening opening = Opening.of(survey);
        Gaps gaps =
                Gaps.of(opening, Uncertain.exact(1470), Uncertain.exact(2370)).orElseThrow();
        Map<String, Estimate> all = new LinkedHashMap<>(OpeningFigures.survey(opening, Side.HEAD));
        all.putAll(OpeningFigures.order(gaps));
        Gaps turned = Gaps.of(opening, Held.FREELY, Uncertain.exact(1470), Uncertain.exact(2370))
                .orElseThrow();
        Map<String, Uncertain> each = new LinkedHashMap<>();
        // The parts that do not govern are first order about the best angle, which moves; the one that governs is
        // exact.
        OpeningFigures.turned(turned).forEach((name, estimate) -> {
            Extreme.Part part = ((Extreme) estimate).governing();
            each.put(name + part.names(), part.value());
        });
        all.forEach((name, estimate) -> {
            if (estimate instanceof Uncertain one) {
                each.put(name, one);
            } else if (!name.startsWith("fit.rule")) {
                ((Extreme) estimate)
                        .parts().stream()
                                .filter(part -> !isAlongOneLine(part.names()))
                                .forEach(part -> each.put(name + part.names(), part.value()));
            }
        });
        return each;
    }

    /** Three gaps of left and right, or of head and foot: their weights are taken as they are. */
    private static boolean isAlongOneLine(List<String> names) {
        return names.size() == 3
                && (names.stream().allMatch(name -> name.startsWith("gap.left") || name.startsWith("gap.right"))
                        || names.stream().allMatch(name -> name.startsWith("gap.head") || name.startsWith("gap.foot")));
    }
}
