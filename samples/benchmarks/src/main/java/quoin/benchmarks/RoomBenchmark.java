package quoin.benchmarks;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One candidate against its yardstick in a JVM of their own; what counts is the ratio, not the time. */
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 20)
@Measurement(iterations = 400)
public class RoomBenchmark {
    /** Who is measured. */
    @State(Scope.Thread)
    public static class Candidate {
        /** Its name in {@link Candidates}. */
        @Param({})
        public String name = "";

        Pair pair = new Pair(time -> 0, time -> 0);

        /** Warms both up. */
        @Setup
        public void warm() {
            pair = Candidates.pair(name).warm(4);
        }
    }

    /** What is read off. */
    @State(Scope.Thread)
    @AuxCounters(AuxCounters.Type.EVENTS)
    public static class Found {
        /** Candidate by yardstick. */
        public double ratio;

        /** Bytes of one evaluation. */
        public double bytes;
    }

    /** A batch of each. */
    @Benchmark
    public double batch(Candidate candidate, Found found) {
        found.ratio = candidate.pair.ratio();
        found.bytes = candidate.pair.bytes();
        return candidate.pair.sink();
    }
}
