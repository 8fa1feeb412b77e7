package quoin.judge;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.primes.Primes;
import org.apache.commons.math3.special.Erf;
import org.apache.commons.math3.special.Gamma;

/**
 * The only door to the distributions of commons-math3 in this package: standard normal, Student's t, chi.
 *
 * <p>Nothing here draws random numbers. Both tails keep their digits, since each is computed as itself and never as one
 * minus the other.
 */
final class Gauss {
    private static final double ROOT_HALF = StrictMath.sqrt(0.5);
    private static final double ROOT_TWO_PI_INVERSE = 1 / StrictMath.sqrt(2 * StrictMath.PI);
    private static final double ROOT_TWO = StrictMath.sqrt(2.0);

    /** What the inverse of the normal can tell from nothing. */
    private static final double LEAST_TAIL = 1e-16;

    /** The rule of Gauss and Legendre with eight points from 0 to 1. */
    private static final GaussIntegrator UNIT = new GaussIntegratorFactory().legendre(8, 0, 1);

    private Gauss() {}

    /** P(Z &le; z); NaN gives NaN. */
    static double below(double z) {
        return 0.5 * Erf.erfc(-z * ROOT_HALF);
    }

    /** P(lo &le; Z &le; hi), from the tail that keeps the digits; 0 where lo is not below hi. */
    static double between(double lo, double hi) {
        if (!(lo < hi)) {
            return 0;
        }
        return lo > 0 ? below(-lo) - below(-hi) : below(hi) - below(lo);
    }

    /** P(T &le; t) for Student's t; the normal for infinite degrees of freedom. */
    static double below(double t, double degreesOfFreedom) {
        if (degreesOfFreedom == Double.POSITIVE_INFINITY || Double.isInfinite(t)) {
            return below(t);
        }
        return new TDistribution(null, degreesOfFreedom).cumulativeProbability(t);
    }

    /** P(lo &le; T &le; hi) for Student's t; 0 where lo is not below hi. */
    static double between(double lo, double hi, double degreesOfFreedom) {
        if (!(lo < hi)) {
            return 0;
        }
        return lo > 0
                ? below(-lo, degreesOfFreedom) - below(-hi, degreesOfFreedom)
                : below(hi, degreesOfFreedom) - below(lo, degreesOfFreedom);
    }

    /** The z that Z stays below as surely as T stays below t; t itself for infinite degrees of freedom. */
    static double score(double t, double degreesOfFreedom) {
        if (degreesOfFreedom == Double.POSITIVE_INFINITY || !(Math.abs(t) > 0 && Math.abs(t) <= Double.MAX_VALUE)) {
            return t;
        }
        double tail = below(-Math.abs(t), degreesOfFreedom);
        return Math.copySign(quantile(Math.max(LEAST_TAIL, tail)), t);
    }

    /** The z with P(Z &le; z) = p, for 0 &lt; p &lt; 1. */
    static double quantile(double p) {
        return p < 0.5 ? -ROOT_TWO * Erf.erfcInv(2 * p) : ROOT_TWO * Erf.erfInv(2 * p - 1);
    }

    /** The t with P(T &le; t) = p for Student's t, 0 &lt; p &lt; 1; the normal for infinite degrees of freedom. */
    static double quantile(double p, double degreesOfFreedom) {
        return degreesOfFreedom == Double.POSITIVE_INFINITY
                ? quantile(p)
                : new TDistribution(null, degreesOfFreedom).inverseCumulativeProbability(p);
    }

    /** 1/(2&pi;) &int; exp(&minus;(a&sup2; &minus; 2 a b cos &theta; + b&sup2;) / (2 sin&sup2; &theta;)) d&theta; from 0 to so many radians. */
    static double wedge(double a, double b, double radians) {
        return radians
                / (2 * StrictMath.PI)
                * UNIT.integrate(part -> {
                    double cos = StrictMath.cos(part * radians);
                    double sin = StrictMath.sin(part * radians);
                    return sin > 0 ? StrictMath.exp(-(a * a - 2 * a * b * cos + b * b) / (2 * sin * sin)) : 0;
                });
    }

    /** The density of the standard normal; 0 at the infinities. */
    static double density(double z) {
        return ROOT_TWO_PI_INVERSE * StrictMath.exp(-0.5 * z * z);
    }

    /** P(|Z| &gt; radius) in so many dimensions. */
    static double beyond(int dimensions, double radius) {
        return radius > 0 ? Gamma.regularizedGammaQ(0.5 * dimensions, 0.5 * radius * radius) : 1;
    }

    /** The density of |Z| in so many dimensions, 2 or more. */
    static double shell(int dimensions, double radius) {
        double half = 0.5 * dimensions;
        double scale = StrictMath.exp(-Gamma.logGamma(half) - (half - 1) * StrictMath.log(2) - 0.5 * radius * radius);
        return StrictMath.pow(radius, dimensions - 1.0) * scale;
    }

    /** The next larger prime. */
    static int primeAfter(int n) {
        return Primes.nextPrime(n + 1);
    }
}
