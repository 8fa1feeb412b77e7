package quoin.opening;

/**
 * How much the least gap that some gaps allow can bend as the frame turns.
 *
 * <p>Gaps i that hold a frame have distances dᵢ along unit normals, with weights μᵢ ≥ 0 whose normals cancel, and allow the
 * least gap V = Σμᵢdᵢ / Σμᵢcos φᵢ, φᵢ the lean of a side from the frame. A side's normal stays as the frame turns, a touched
 * point's turns with it. Three normals cancel with the sines of the angles between the other two; so μᵢ″ is 0 or −μᵢ, and μᵢ′
 * at most 1, and only where one of those two turns. From the place at the angle a, where dᵢ = V(a)·cos φᵢ, the rest
 * rᵢ = dᵢ − V(a)·cos φᵢ starts at 0, and with M = Σμᵢrᵢ, D = Σμᵢcos φᵢ, V = V(a) + G, G = M/D:
 * G″ = (M″ − 2G′D′ − GD″)/D. Each term is bounded for all angles within a distance T of a, since
 * cos(φ + T) ≥ (1 − T²/2 − T tan φ) cos φ, sin(φ + T) ≤ (tan φ + T) cos φ,
 * |rᵢ′| ≤ far + |V|sin φ and |rᵢ″| ≤ far + |V|. Own derivation.
 *
 * <p>Where all normals stay (or both turn), μᵢ are constant. Then (V′D²)′ = (M″ + M)D for the whole M, and M″ + M is a constant:
 * V′ changes its sign once at most. Immutable and safe for use by many threads.
 *
 * @param far how far what is met is from the middle of the frame at most, in mm
 * @param lean how far a side leans from the frame at most, as a tangent
 * @param normals the μᵢ
 */
record Curve(double far, double lean, Normals normals) {
    /** The most that the second derivative of the least gap can be within a distance of the angle, in mm per rad². */
    double bend(double value, double within) {
        double straight = StrictMath.sqrt(1 + lean * lean);
        double c = (1 - within * within / 2 - lean * within) / straight;
        double s = StrictMath.min(1, (lean + within) / straight);
        double turning = normals.turning();
        double left = normals.sines() - within * turning;
        if (!(c > 0) || !(left > 0)) {
            return Double.POSITIVE_INFINITY;
        }
        double v = Math.abs(value);
        double turn = turning / left;
        double first = far + v * s;
        double second = far + v;
        double g = first * within / c;
        double gSlope = ((turn * within + 1) * first + g * (turn + s)) / c;
        double m = second + (turning > 0 ? first * within + 2 * first * turn : 0);
        double d = turning > 0 ? 2 + 2 * turn * s : 1;
        return (m + 2 * gSlope * (turn + s) + g * d) / c;
    }
}
