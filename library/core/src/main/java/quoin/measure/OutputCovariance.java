package quoin.measure;

/** The covariance of the outputs, block by block; nothing is done for none. Mutable. */
final class OutputCovariance {
    private final int outputs;
    private final double[] means;
    private final double[][] products;
    private long count;

    OutputCovariance(int outputs) {
        this.outputs = outputs;
        this.means = new double[outputs];
        this.products = new double[outputs][outputs];
    }

    void add(double[][] block) {
        if (outputs == 0) {
            return;
        }
        int n = block[0].length;
        double all = count + n;
        double[] blockMeans = new double[outputs];
        for (int i = 0; i < outputs; i++) {
            blockMeans[i] = Sums.of(block[i]) / n;
        }
        for (int i = 0; i < outputs; i++) {
            for (int j = 0; j <= i; j++) {
                double between = (blockMeans[i] - means[i]) * (blockMeans[j] - means[j]) * count * n / all;
                products[i][j] += Sums.ofProducts(block[i], blockMeans[i], block[j], blockMeans[j]) + between;
            }
        }
        for (int i = 0; i < outputs; i++) {
            means[i] += (blockMeans[i] - means[i]) * n / all;
        }
        count += n;
    }

    double[][] matrix() {
        double[][] matrix = new double[outputs][outputs];
        for (int i = 0; i < outputs; i++) {
            for (int j = 0; j < outputs; j++) {
                matrix[i][j] = products[StrictMath.max(i, j)][StrictMath.min(i, j)] / (count - 1);
            }
        }
        return matrix;
    }
}
