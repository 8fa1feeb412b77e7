package quoin.fixing;

import java.util.List;
import java.util.Objects;
import quoin.judge.Args;
import quoin.judge.Source;
import quoin.judge.Step;

/**
 * Screws of 6 to 12 mm pulled out of softwood by EN 1995-1-1:2004 with A1:2008: design resistances.
 *
 * <p>A thinner screw has no formula there: its resistance is declared by its maker, tested on site, or not verified. The
 * constants were read in secondary sources or recalled, as each says; whoever relies on them holds them against a licensed
 * copy and the national annex. The local code and licensed practice decide. Stateless.
 */
public final class En1995 {
    /** The edition, as findings name it. */
    public static final String EDITION = "en-1995-1-1-2004-a1-2008";

    /** Partial factor of connections; recalled, not seen. */
    public static final double PARTIAL_FACTOR = 1.3;

    private static final Source WITHDRAWAL = Source.of(
            Source.Kind.STANDARD, "EN 1995-1-1:2004+A1:2008, 8.7.2, equations 8.38 to 8.40 (secondary source)");
    private static final Source FACTORS =
            Source.of(Source.Kind.STANDARD, "EN 1995-1-1, tables 2.3 and 3.1 (table 3.1 secondary, 1.3 from memory)");
    private static final Source TEMPERATURE =
            Source.of(Source.Kind.STANDARD, "EN 1995-1-1, 2.3: not long above 60 degC (secondary source)");
    private static final Resistance.Method METHOD = Resistance.Method.PARTIAL_FACTORS;
    private static final double HOTTEST = 60;

    private En1995() {}

    /** How long the load with the shortest duration lasts: the factor k_mod of solid timber. */
    public enum Duration {
        /** More than ten years. */
        PERMANENT(0.60, 0.50),
        /** Six months to ten years. */
        LONG(0.70, 0.55),
        /** A week to six months. */
        MEDIUM(0.80, 0.65),
        /** Less than a week. */
        SHORT(0.90, 0.70),
        /** At once. */
        INSTANTANEOUS(1.10, 0.90);

        private final double sheltered;
        private final double exposed;

        Duration(double sheltered, double exposed) {
            this.sheltered = sheltered;
            this.exposed = exposed;
        }
    }

    /**
     * What the timber lives in.
     *
     * @param duration how long the load lasts
     * @param serviceClass 1, 2 or 3
     * @param celsius the highest temperature it reaches for long, in &deg;C
     */
    public record Service(Duration duration, int serviceClass, double celsius) {
        /** Refuses classes and temperatures that there are not. */
        public Service {
            Objects.requireNonNull(duration, "duration");
            if (serviceClass < 1 || serviceClass > 3) {
                throw new IllegalArgumentException("service class must be 1, 2 or 3, got " + serviceClass);
            }
            if (!Double.isFinite(celsius)) {
                throw new IllegalArgumentException("celsius must be finite, got " + celsius + " degC");
            }
        }

        /**
         * The modification factor of solid timber.
         *
         * @return k_mod
         */
        public double modification() {
            return serviceClass == 3 ? duration.exposed : duration.sheltered;
        }
    }

    /**
     * A screw and how it sits.
     *
     * @param diameterMm outer diameter d of the thread, in mm
     * @param coreMm core diameter d&#8321; of the thread, in mm
     * @param threadMm length of thread in the timber, in mm
     * @param degreesToGrain angle between its axis and the grain, from 30 to 90
     */
    public record Screw(double diameterMm, double coreMm, double threadMm, double degreesToGrain) {
        /** Refuses lengths and angles that there are not. */
        public Screw {
            CodeRange.requireAboveZero("diameter", diameterMm, " mm");
            CodeRange.requireAboveZero("core", coreMm, " mm");
            CodeRange.requireAboveZero("thread", threadMm, " mm");
            if (!(degreesToGrain >= 0 && degreesToGrain <= 90)) {
                throw new IllegalArgumentException(
                        "degrees to grain must be from 0 to 90, got " + degreesToGrain + " deg");
            }
        }
    }

    /**
     * The design resistance of one of several screws pulled out together.
     *
     * @param screw the screw and how it sits
     * @param density characteristic density of the timber, in kg/m&sup3;, above 0
     * @param count how many act together, 1 or more
     * @param service what the timber lives in
     * @return the resistance of each; unknown outside 6 &le; d &le; 12, 0.6 &le; d&#8321;/d &le; 0.75, thread &ge; 6 d; barred
     *     below 30&deg; to the grain and for timber above 60 &deg;C
     * @formula k_mod / 1.3 &middot; n^0.9 / n &middot; 0.52 d^&minus;0.5 l^&minus;0.1 &rho;^0.8 d l min(d/8; 1) / (1.2 cos&sup2; + sin&sup2;)
     * @unit mm, kg/m&sup3;, N
     * @edge the ends of the ranges belong to them
     * @source standard: EN 1995-1-1:2004+A1:2008, 8.7.2 from a secondary source, l &ge; 6 d and 1.3 from memory
     * @throws IllegalArgumentException if a number is out of its range
     */
    public static Resistance withdrawal(Screw screw, double density, int count, Service service) {
        CodeRange.requireAboveZero("density", density, " kg/m3");
        if (count < 1) {
            throw new IllegalArgumentException("count must be 1 or more, got " + count);
        }
        double d = screw.diameterMm();
        double slender = screw.coreMm() / d;
        if (screw.degreesToGrain() < 30) {
            return Resistance.barred(
                    METHOD,
                    new Step(
                            "end-grain",
                            Args.of("edition", EDITION).with("angle", screw.degreesToGrain(), "deg"),
                            WITHDRAWAL));
        }
        if (service.celsius() > HOTTEST) {
            Args args = Args.of("edition", EDITION)
                    .with("celsius", service.celsius(), "degC")
                    .with("atMost", HOTTEST);
            return Resistance.barred(METHOD, new Step("timber-too-hot", args, TEMPERATURE));
        }
        if (!(d >= 6 && d <= 12)) {
            return beyond("diameter", d, "mm", 6, 12);
        }
        if (!(slender >= 0.6 && slender <= 0.75)) {
            return beyond("core-by-diameter", slender, "1", 0.6, 0.75);
        }
        if (screw.threadMm() < 6 * d) {
            return Resistance.unknown(
                    METHOD,
                    new Step(
                            "thread-too-short",
                            Args.of("edition", EDITION)
                                    .with("got", screw.threadMm(), "mm")
                                    .with("atLeast", 6 * d),
                            WITHDRAWAL));
        }
        double characteristic = characteristic(screw, density);
        double each = StrictMath.pow(count, 0.9) / count;
        double modified = service.modification() / PARTIAL_FACTOR;
        Step value = new Step(
                "ec5-withdrawal",
                Args.of("edition", EDITION)
                        .with("density", density)
                        .with("characteristic", characteristic, "N")
                        .with("each", each),
                WITHDRAWAL);
        Step factors = new Step(
                "ec5-factors",
                Args.of("modification", service.modification()).with("partial", PARTIAL_FACTOR),
                FACTORS);
        return Resistance.of(METHOD, characteristic * each * modified, List.of(value, factors));
    }

    /** F_ax,Rk of one screw, in N. */
    private static double characteristic(Screw screw, double density) {
        double d = screw.diameterMm();
        double l = screw.threadMm();
        double angle = StrictMath.toRadians(screw.degreesToGrain());
        double strength = 0.52 / StrictMath.sqrt(d) * StrictMath.pow(l, -0.1) * StrictMath.pow(density, 0.8);
        double thin = StrictMath.min(d / 8, 1);
        double cos = StrictMath.cos(angle);
        double sin = StrictMath.sin(angle);
        return strength * d * l * thin / (1.2 * cos * cos + sin * sin);
    }

    private static Resistance beyond(String what, double got, String unit, double least, double greatest) {
        double[] range = {least, greatest};
        return Resistance.unknown(METHOD, CodeRange.beyond(EDITION, what, got, unit, range, WITHDRAWAL));
    }
}
