package quoin.clearance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import quoin.judge.Caution;
import quoin.judge.Caution.Severity;

/** The usual cautions of work overhead, each only where it applies, worst first. */
public final class Cautions {
    private Cautions() {}

    /** From here on a voltage can kill; common practice, no source. */
    private static final double DANGEROUS_VOLTS = 50;

    /**
     * What is known of the power of a job.
     *
     * @param driven whether a drive is chosen
     * @param volts the highest voltage of drive and supply; NaN where not known
     */
    public record Power(boolean driven, double volts) {}

    /**
     * The cautions that apply.
     *
     * @param facts what is known of the site
     * @param power what is known of its power
     * @return the cautions, worst first
     */
    public static List<Caution> of(SiteFacts facts, Power power) {
        List<Caution> all = new ArrayList<>();
        all.add(Caution.of("hidden-cables", Severity.DANGER));
        boolean harmless = power.volts() < DANGEROUS_VOLTS;
        if (power.driven() && !harmless) {
            all.add(Caution.of("licensed-electrician", Severity.DANGER));
            all.add(Caution.of("isolate-and-prove-dead", Severity.DANGER));
        }
        if (power.driven()) {
            all.add(Caution.of("stored-energy", Severity.WARN));
            all.add(Caution.of("pinch-points", Severity.WARN));
            all.add(Caution.of("loose-cords", Severity.WARN));
        }
        all.add(Caution.of("second-retention", Severity.WARN));
        all.add(Caution.of("clear-below", Severity.WARN));
        if (!facts.get("glazed").equals("no")) {
            all.add(Caution.of("not-on-glazing", Severity.WARN));
            all.add(Caution.of("heat-and-condensation", Severity.NOTE));
        }
        all.add(Caution.of("board-age", Severity.WARN));
        all.add(Caution.of("dust", Severity.NOTE));
        all.add(Caution.of("sharp-ends", Severity.NOTE));
        all.sort(Comparator.comparing(Caution::severity));
        return List.copyOf(all);
    }
}
