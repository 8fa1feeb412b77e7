package quoin.fixing;

import java.util.List;
import java.util.Objects;
import quoin.judge.Args;
import quoin.judge.Source;
import quoin.judge.Step;

/**
 * Wood screws in timber by the National Design Specification for Wood Construction, edition 2018: allowable loads.
 *
 * <p>The constants were read in secondary sources that cite clause and table; whoever relies on them holds them against a
 * licensed copy. The local code and licensed practice decide. Shear is not computed here. Stateless.
 */
public final class Nds2018 {
    /** The edition, as findings name it. */
    public static final String EDITION = "nds-2018";

    private static final Source WITHDRAWAL =
            Source.of(Source.Kind.STANDARD, "NDS 2018, 12.2.2, equation 12.2-2 (secondary source)");
    private static final Source PULL_THROUGH =
            Source.of(Source.Kind.STANDARD, "NDS 2018, 12.2.5, equations 12.2-6a and b (secondary source)");
    private static final Source FACTORS =
            Source.of(Source.Kind.STANDARD, "NDS 2018, chapters 2 and 11 (secondary source)");
    private static final Source END_GRAIN =
            Source.of(Source.Kind.STANDARD, "NDS 2018, 12.2.2: no wood screw in end grain (secondary source)");
    private static final Resistance.Method METHOD = Resistance.Method.ALLOWABLE_LOAD;
    private static final double INCH_MM = 25.4;
    private static final double POUND_N = 4.4482216152605;
    private static final double LEAST_GRAVITY = 0.31;
    private static final double GREATEST_GRAVITY = 0.73;
    private static final double LEAST_INCH = 0.138;
    private static final double GREATEST_INCH = 0.372;

    private Nds2018() {}

    /** How long a load lasts over the life of the work: the factor C_D. */
    public enum Duration {
        /** More than ten years. */
        PERMANENT(0.9),
        /** Ten years. */
        TEN_YEARS(1.0),
        /** Two months. */
        TWO_MONTHS(1.15),
        /** Seven days. */
        SEVEN_DAYS(1.25),
        /** Ten minutes; connections take no more. */
        TEN_MINUTES(1.6);

        private final double factor;

        Duration(double factor) {
            this.factor = factor;
        }

        /** {@return C_D} */
        public double factor() {
            return factor;
        }
    }

    /**
     * What the timber lives in.
     *
     * @param duration how long the load lasts
     * @param wet whether its moisture exceeds 19 % in service
     * @param celsius the highest temperature it reaches, in &deg;C
     */
    public record Service(Duration duration, boolean wet, double celsius) {
        /** Refuses what is no temperature. */
        public Service {
            Objects.requireNonNull(duration, "duration");
            if (!Double.isFinite(celsius)) {
                throw new IllegalArgumentException("celsius must be finite, got " + celsius + " degC");
            }
        }

        /** C_t; NaN above the range of the code. 100, 125 and 150 degrees Fahrenheit. */
        double temperatureFactor() {
            double fahrenheit = celsius * 9 / 5 + 32;
            if (fahrenheit <= 100) {
                return 1;
            }
            if (fahrenheit <= 125) {
                return wet ? 0.7 : 0.8;
            }
            return fahrenheit <= 150 ? wet ? 0.5 : 0.7 : Double.NaN;
        }

        /** C_M of withdrawal. */
        double moistureFactor() {
            return wet ? 0.7 : 1;
        }
    }

    /**
     * The allowable load of a wood screw pulled out of side grain.
     *
     * @param gravity specific gravity G of the timber, from 0.31 to 0.73
     * @param diameterMm the nominal diameter D, from No. 6 (3.5 mm) to No. 24 (9.45 mm)
     * @param threadMm how much thread sits in the timber, in mm, above 0
     * @param service what the timber lives in
     * @return the resistance; unknown outside the range of G or D, barred above 150 &deg;F (65.6 &deg;C)
     * @formula W = 2850 G&sup2; D lbf for each inch of thread, times C_D, C_M and C_t
     * @unit mm, &deg;C, N
     * @edge the ends of the ranges belong to them
     * @source standard: NDS 2018, equation 12.2-2, factors of chapter 11, from a secondary source
     * @throws IllegalArgumentException if a number is not above 0 and finite
     */
    public static Resistance withdrawal(double gravity, double diameterMm, double threadMm, Service service) {
        CodeRange.requireAboveZero("gravity", gravity, "");
        CodeRange.requireAboveZero("diameter", diameterMm, " mm");
        CodeRange.requireAboveZero("thread", threadMm, " mm");
        double inch = diameterMm / INCH_MM;
        if (!isWithin(gravity, LEAST_GRAVITY, GREATEST_GRAVITY)) {
            return beyond("gravity", gravity, "1", LEAST_GRAVITY, GREATEST_GRAVITY);
        }
        if (!isWithin(inch, LEAST_INCH, GREATEST_INCH)) {
            return beyond("diameter", diameterMm, "mm", LEAST_INCH * INCH_MM, GREATEST_INCH * INCH_MM);
        }
        double temperature = service.temperatureFactor();
        if (Double.isNaN(temperature)) {
            return tooHot(service);
        }
        double perMm = 2850 * gravity * gravity * inch * POUND_N / INCH_MM;
        double factors = service.duration().factor() * service.moistureFactor() * temperature;
        Step value = new Step(
                "nds-withdrawal",
                Args.of("edition", EDITION)
                        .with("gravity", gravity)
                        .with("perMm", perMm, "N/mm")
                        .with("thread", threadMm),
                WITHDRAWAL);
        return Resistance.of(METHOD, perMm * threadMm * factors, List.of(value, factors(service, temperature)));
    }

    /**
     * The allowable load at which the head of a screw is pulled through timber or board.
     *
     * @param gravity specific gravity G of what the head sits on, from 0.31 to 0.73
     * @param headMm the diameter of the head, in mm, above 0
     * @param thicknessMm how thick the part under the head is, in mm, above 0
     * @param service what it lives in
     * @return the resistance; unknown outside the range of G, barred above 150 &deg;F (65.6 &deg;C)
     * @formula W_H = 690 &pi; D_H G&sup2; t lbf up to t = 2.5 D_H, beyond 1725 &pi; D_H&sup2; G&sup2;; times C_D, C_M and C_t
     * @unit mm, &deg;C, N
     * @edge the same from both formulas at t = 2.5 D_H
     * @source standard: NDS 2018, equations 12.2-6a and b, from a secondary source
     * @throws IllegalArgumentException if a number is not above 0 and finite
     */
    public static Resistance pullThrough(double gravity, double headMm, double thicknessMm, Service service) {
        CodeRange.requireAboveZero("gravity", gravity, "");
        CodeRange.requireAboveZero("head", headMm, " mm");
        CodeRange.requireAboveZero("thickness", thicknessMm, " mm");
        if (!isWithin(gravity, LEAST_GRAVITY, GREATEST_GRAVITY)) {
            return beyond("gravity", gravity, "1", LEAST_GRAVITY, GREATEST_GRAVITY);
        }
        double temperature = service.temperatureFactor();
        if (Double.isNaN(temperature)) {
            return tooHot(service);
        }
        double head = headMm / INCH_MM;
        double depth = StrictMath.min(thicknessMm / INCH_MM, 2.5 * head);
        double newtons = 690 * StrictMath.PI * head * gravity * gravity * depth * POUND_N;
        double factors = service.duration().factor() * service.moistureFactor() * temperature;
        Step value = new Step(
                "nds-pull-through",
                Args.of("edition", EDITION)
                        .with("gravity", gravity)
                        .with("head", headMm, "mm")
                        .with("thickness", thicknessMm),
                PULL_THROUGH);
        return Resistance.of(METHOD, newtons * factors, List.of(value, factors(service, temperature)));
    }

    /**
     * A wood screw in end grain, loaded in withdrawal: nothing to count on.
     *
     * @return a barred resistance
     */
    public static Resistance endGrain() {
        return Resistance.barred(METHOD, new Step("end-grain", Args.of("edition", EDITION), END_GRAIN));
    }

    private static Step factors(Service service, double temperature) {
        return new Step(
                "nds-factors",
                Args.of("duration", service.duration().factor())
                        .with("moisture", service.moistureFactor())
                        .with("temperature", temperature),
                FACTORS);
    }

    private static Resistance tooHot(Service service) {
        Args args = Args.of("edition", EDITION)
                .with("celsius", service.celsius(), "degC")
                .with("atMost", (150 - 32) * 5 / 9.0);
        return Resistance.barred(METHOD, new Step("timber-too-hot", args, FACTORS));
    }

    private static Resistance beyond(String what, double got, String unit, double least, double greatest) {
        double[] range = {least, greatest};
        return Resistance.unknown(METHOD, CodeRange.beyond(EDITION, what, got, unit, range, WITHDRAWAL));
    }

    private static boolean isWithin(double value, double least, double greatest) {
        return value >= least * (1 - 1e-9) && value <= greatest * (1 + 1e-9);
    }
}
