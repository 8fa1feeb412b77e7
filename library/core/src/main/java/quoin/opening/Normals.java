package quoin.opening;

/**
 * The weights with which the unit normals of two or three gaps cancel: the sines of the angles between the other two. The
 * normal of a line stays as the frame turns, that of a touched point turns with it. Immutable and safe for use by many
 * threads.
 *
 * @param sines the sum of the weights
 * @param turning how fast they can change, all together, per rad: 0 where all normals stay or all turn, infinite where two
 *     cancel at that angle alone
 */
record Normals(double sines, double turning) {
    static Normals of(Contacts contacts, int[] of) {
        int points = 0;
        for (int i : of) {
            points += contacts.isLine(i) ? 0 : 1;
        }
        boolean turns = points > 0 && points < of.length;
        if (of.length == 2) {
            return new Normals(2, turns ? Double.POSITIVE_INFINITY : 0);
        }
        double sines = sine(contacts, of[0], of[1]) + sine(contacts, of[1], of[2]) + sine(contacts, of[2], of[0]);
        return new Normals(sines, turns ? 2 : 0);
    }

    /** Of the three sines the two between a normal that stays and one that turns change, by 1 per rad at most. */
    private static double sine(Contacts contacts, int i, int j) {
        double xi = contacts.pushX(i);
        double yi = contacts.pushY(i);
        double xj = contacts.pushX(j);
        double yj = contacts.pushY(j);
        return Math.abs(xi * yj - yi * xj) / StrictMath.sqrt((xi * xi + yi * yi) * (xj * xj + yj * yj));
    }
}
