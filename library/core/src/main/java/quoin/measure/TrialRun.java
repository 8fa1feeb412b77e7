package quoin.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One run: trials in blocks, of which only moments and tails are kept. */
final class TrialRun {
    private final MonteCarlo settings;
    private final List<Uncertain> inputs;
    private final int outputs;
    private final MonteCarlo.Model model;

    TrialRun(MonteCarlo settings, List<Uncertain> inputs, int outputs, MonteCarlo.Model model) {
        this.settings = settings;
        this.inputs = List.copyOf(inputs);
        this.outputs = outputs;
        this.model = model;
    }

    /** Empty in the rare case that the first block misjudged where the tails begin. */
    Optional<Simulation> withTails() {
        return run(6);
    }

    /** Everything kept: slower, and always enough. */
    Simulation withAllTrials() {
        return run(Double.POSITIVE_INFINITY).orElseThrow();
    }

    private Optional<Simulation> run(double margin) {
        Draws draws = new Draws(inputs, new Generator(settings.seed()));
        int size = settings.blockSize();
        double[][] block = new double[outputs][size];
        List<OutputTrials> found = new ArrayList<>();
        OutputCovariance covariance = new OutputCovariance(settings.hasCovariance() ? outputs : 0);
        boolean stable = false;
        int blocks = 0;
        while (blocks < settings.mostBlocks() && !stable) {
            fill(draws, block);
            for (int j = 0; j < outputs; j++) {
                if (blocks == 0) {
                    found.add(new OutputTrials(settings, block[j], margin));
                }
                found.get(j).add(block[j]);
            }
            covariance.add(block);
            blocks++;
            stable = settings.isAdaptive() && blocks >= settings.fewestBlocks() && areStable(found);
        }
        List<SimulatedOutput> results = new ArrayList<>();
        for (OutputTrials output : found) {
            if (!output.hasEnough()) {
                return Optional.empty();
            }
            results.add(output.result());
        }
        boolean settled = stable || !settings.isAdaptive();
        return Optional.of(new Simulation(settings, blocks * size, settled, results, covariance.matrix()));
    }

    private boolean areStable(List<OutputTrials> found) {
        for (OutputTrials output : found) {
            if (!output.isStable()) {
                return false;
            }
        }
        return true;
    }

    private void fill(Draws draws, double[][] block) {
        double[] in = new double[draws.inputs()];
        double[] out = new double[outputs];
        for (int t = 0; t < block[0].length; t++) {
            draws.draw(in);
            model.evaluate(in, out);
            for (int j = 0; j < outputs; j++) {
                block[j][t] = out[j];
            }
        }
    }
}
