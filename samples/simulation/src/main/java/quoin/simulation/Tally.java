package quoin.simulation;

/** What was claimed of many openings and what happened. */
final class Tally {
    private final String name;
    private long count;
    private double claimed;
    private long happened;

    Tally(String name) {
        this.name = name;
    }

    void add(double probability, boolean holds) {
        count++;
        claimed += probability;
        happened += holds ? 1 : 0;
    }

    String name() {
        return name;
    }

    long count() {
        return count;
    }

    double claimed() {
        return claimed / count;
    }

    double happened() {
        return (double) happened / count;
    }

    /** Claimed less happened: above 0 is too bold, below it cautious. */
    double difference() {
        return claimed() - happened();
    }

    /** One standard error of what happened. */
    double error() {
        double p = happened();
        return StrictMath.sqrt(Math.max(p * (1 - p), 1.0 / count) / count);
    }
}
