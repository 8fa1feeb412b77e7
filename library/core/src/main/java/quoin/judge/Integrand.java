package quoin.judge;

/** A function on the cube whose mean is wanted. Not safe for use by many threads: an integrand may keep room to work in. */
interface Integrand {
    /** {@return the dimensions of the cube} */
    int dimensions();

    /** {@return the multiplications of one evaluation, roughly} */
    double work();

    /** The value at a point of the cube. */
    double at(double[] point);
}
