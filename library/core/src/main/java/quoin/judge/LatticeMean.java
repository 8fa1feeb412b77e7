package quoin.judge;

/**
 * The mean of an integrand on a fixed lattice that grows.
 *
 * <p>Richtmyer points (multiples of the square roots of primes), folded so that the ends meet, under eleven fixed shifts.
 * The error is three standard errors of the mean of the shifts, never less than 5e-6. Growing stops below 1e-4 or at a cap of work; the error
 * then stands as it is. Nothing is drawn at random: the same integrand gives the same digits on every machine. One use,
 * one thread.
 */
final class LatticeMean {
    private static final int SHIFTS = 11;
    private static final int FIRST = 256;
    private static final int MOST_POINTS = 1 << 16;
    private static final double MOST_WORK = 4e8;
    private static final double LEAST = 5e-6;
    private static final double WANTED = 1e-4;

    private final Integrand integrand;
    private final double[] generators;
    private final double[][] shifts;
    private final double[] sums = new double[SHIFTS];
    private int done;

    /** The mean over the first points. */
    LatticeMean(Integrand integrand) {
        this(integrand, FIRST);
    }

    /** The mean over so many points under each shift. */
    LatticeMean(Integrand integrand, int points) {
        this.integrand = integrand;
        generators = generators(integrand.dimensions());
        shifts = shifts(integrand.dimensions());
        addUpTo(points);
    }

    /** Doubles the lattice until the error is small enough or the work is done. */
    LatticeMean grow() {
        while (!(error() <= WANTED) && mayGrow()) {
            addUpTo(2 * done);
        }
        return this;
    }

    /** {@return the mean} */
    double value() {
        double mean = 0;
        for (double sum : sums) {
            mean += sum / done / SHIFTS;
        }
        return mean;
    }

    /** {@return three standard errors of the mean, and never less than 5e-6} */
    double error() {
        double mean = value();
        double squares = 0;
        for (double sum : sums) {
            double d = sum / done - mean;
            squares += d * d;
        }
        return Math.max(LEAST, 3 * StrictMath.sqrt(squares / (SHIFTS - 1) / SHIFTS));
    }

    /** {@return how much error a unit of work leaves; less is better} */
    double effort() {
        return error() * StrictMath.sqrt(integrand.work());
    }

    private boolean mayGrow() {
        return 2 * done <= MOST_POINTS && 2.0 * done * SHIFTS * integrand.work() <= MOST_WORK;
    }

    private void addUpTo(int points) {
        double[] point = new double[generators.length];
        for (int s = 0; s < SHIFTS; s++) {
            for (int k = done + 1; k <= points; k++) {
                place(k, shifts[s], point);
                sums[s] += integrand.at(point);
            }
        }
        done = points;
    }

    private void place(int k, double[] shift, double[] point) {
        for (int q = 0; q < point.length; q++) {
            double x = fraction(k * generators[q] + shift[q]);
            point[q] = 1 - Math.abs(2 * x - 1);
        }
    }

    private static double fraction(double x) {
        return x - StrictMath.floor(x);
    }

    private static double[] generators(int dimensions) {
        double[] generators = new double[dimensions];
        int prime = 1;
        for (int q = 0; q < dimensions; q++) {
            prime = Gauss.primeAfter(prime);
            generators[q] = fraction(StrictMath.sqrt(prime));
        }
        return generators;
    }

    /** Shifts that are a lattice themselves, so that their mean is better than their spread tells. */
    private static double[][] shifts(int dimensions) {
        double[][] shifts = new double[SHIFTS][dimensions];
        for (int s = 0; s < SHIFTS; s++) {
            int multiple = s;
            for (int q = 0; q < dimensions; q++) {
                shifts[s][q] = (double) multiple / SHIFTS;
                multiple = 2 * multiple % SHIFTS;
            }
        }
        return shifts;
    }
}
