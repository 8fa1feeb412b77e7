package quoin.judge;

/** Fixed directions on a sphere: a Richtmyer lattice (square roots of primes), folded, shifted, mapped by the inverse normal. */
final class Lattice {
    private static final double INSIDE = 1 - 0x1.0p-50;

    private final int dimensions;
    private final double[] generators;
    private final double[][] shifts;

    Lattice(int dimensions, int shiftCount) {
        this.dimensions = dimensions;
        generators = new double[dimensions];
        int prime = 1;
        for (int k = 0; k < dimensions; k++) {
            prime = nextPrime(prime);
            generators[k] = fraction(StrictMath.sqrt(prime));
        }
        shifts = new double[shiftCount][dimensions];
        long state = 1;
        for (double[] shift : shifts) {
            for (int k = 0; k < dimensions; k++) {
                state = state * 6364136223846793005L + 1442695040888963407L;
                shift[k] = (state >>> 11) * 0x1.0p-53;
            }
        }
    }

    /** Fills in the unit vector of that point and shift. */
    void direction(int point, int shift, double[] u) {
        if (dimensions == 2) {
            double angle = StrictMath.PI * fraction(point * generators[0] + shifts[shift][0]);
            u[0] = StrictMath.cos(angle);
            u[1] = StrictMath.sin(angle);
            return;
        }
        double sum = 0;
        for (int k = 0; k < dimensions; k++) {
            double x = fraction((point + 1) * generators[k] + shifts[shift][k]);
            u[k] = Gauss.quantileOfSpan(INSIDE * (1 - 2 * Math.abs(2 * x - 1)));
            sum += u[k] * u[k];
        }
        double scale = 1 / StrictMath.sqrt(sum);
        for (int k = 0; k < dimensions; k++) {
            u[k] *= scale;
        }
    }

    private static double fraction(double x) {
        return x - StrictMath.floor(x);
    }

    private static int nextPrime(int after) {
        int candidate = after + 1;
        while (!isPrime(candidate)) {
            candidate++;
        }
        return candidate;
    }

    private static boolean isPrime(int n) {
        for (int d = 2; d * d <= n; d++) {
            if (n % d == 0) {
                return false;
            }
        }
        return true;
    }
}
