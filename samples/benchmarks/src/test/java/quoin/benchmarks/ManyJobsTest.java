package quoin.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import quoin.job.Job;
import quoin.json.JobDocument;
import quoin.json.Read;

class ManyJobsTest {
    private static List<String> lines(int count) {
        ManyJobs many = new ManyJobs(1);
        List<String> lines = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            lines.add(many.next(i));
        }
        return lines;
    }

    /** A generator that made jobs nobody can read would prove nothing. */
    @Test
    void everyLineIsAJobOfItsOwn() {
        Set<String> digests = new HashSet<>();
        for (String line : lines(200)) {
            assertThat(line.indexOf('\n')).isEqualTo(line.length() - 1);
            Read<Job> read = JobDocument.read(line.getBytes(StandardCharsets.UTF_8));
            assertThat(read.problems()).isEmpty();
            digests.add(read.value().orElseThrow().digest());
        }
        assertThat(digests).hasSize(200);
    }

    @Test
    void theSameSeedGivesTheSameJobs() {
        assertThat(lines(20)).isEqualTo(lines(20));
    }

    @Test
    void surveysAreNotAllOfOneKind() {
        Set<Integer> readings = new HashSet<>();
        for (String line : lines(200)) {
            readings.add(line.split("\"by\"").length - 1);
        }
        assertThat(readings).hasSizeGreaterThan(6);
        assertThat(lines(200)).anyMatch(line -> line.contains("\"structure\":\"unknown\""));
    }
}
