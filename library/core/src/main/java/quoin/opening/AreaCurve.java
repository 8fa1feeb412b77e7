package quoin.opening;

/**
 * How much the largest area that some gaps allow can bend as the frame turns.
 *
 * <p>Gaps whose normals cancel with weights μᵢ ({@link Normals}) allow a·w + b·l ≤ c; the two sets that hold the largest
 * rectangle, each times what it is worth, add up to A·w + B·l ≤ C with A = 1/w₀, B = 1/l₀, C = 2 at the angle a. At other angles
 * of the piece they still hold, so √(w·l) ≤ C/(2√(AB)) = √(w₀l₀)·cosh y + F/H, where y = ½ ln(w₀A/(l₀B)), F = C − w₀A − l₀B = Σμᵢdᵢ
 * (the distances dᵢ of a frame w₀ by l₀, 0 at a) and H = 2√(AB). With |μᵢ′| and |dᵢ″| bounded as in {@link Curve}, so are A′, A″ (alike
 * B), F and H for all angles within a distance T of a, and with them the second derivative. Own derivation. Immutable and
 * safe for use by many threads.
 *
 * @param width w₀ in mm
 * @param length l₀ in mm
 * @param far how far what is met is from the middle of the frame at most, in mm
 * @param weights Σμᵢ at the angle, over both sets, per mm
 * @param turning how fast these can change, all together, per mm and rad
 */
record AreaCurve(double width, double length, double far, double weights, double turning) {
    /** The most that the second derivative of √(w·l) can be within a distance of the angle, in mm per rad². */
    double bend(double within) {
        double most = weights + within * turning;
        double slope = (most + turning) / 2;
        double a = 1 / width - within * slope;
        double b = 1 / length - within * slope;
        if (!(a > 0 && b > 0)) {
            return Double.POSITIVE_INFINITY;
        }
        double curved = turning > 0 ? most + turning : most / 2;
        double both = slope / a + slope / b;
        double hyperbola = StrictMath.sqrt(width * length) * both * both / 4 * StrictMath.cosh(both * within / 2);
        double h = 2 * StrictMath.sqrt(a * b);
        double g = most * far * within / h;
        double gSlope = (most + turning * within) * far / h + g * both / 2;
        double f = most * far + (turning > 0 ? most * far * within + 2 * turning * far : 0);
        return hyperbola + f / h + gSlope * both + g * (curved / a / 2 + curved / b / 2 + both * both / 4);
    }
}
