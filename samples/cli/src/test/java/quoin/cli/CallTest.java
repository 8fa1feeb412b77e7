package quoin.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CallTest {
    @Test
    void optionsStandInAnyOrder() throws BadUse {
        Call expected = new Call(List.of("job"), List.of(), List.of("a", "b"), List.of("p"), true);
        assertThat(Call.parse(List.of("assess", "job", "--json", "--rulebook", "a", "--rulebook", "b", "--parts", "p")))
                .isEqualTo(expected);
        assertThat(Call.parse(List.of("assess", "--parts=p", "--rulebook=a", "--json", "--rulebook", "b", "job")))
                .isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "''                              | no command",
                "judge                           | judge is not a command",
                "assess                          | no job is given",
                "assess a b                      | more than one job",
                "assess a --jsn                  | --jsn is not an option, use one of --rulebook",
                "assess a --json=yes             | --json takes no value",
                "assess a --rulebook             | --rulebook lacks its file",
                "assess a --parts --json         | --parts lacks its file",
                "assess a --lines b              | --lines and a job are both given",
                "assess --lines a --lines b      | --lines is given 2 times",
                "assess nowhere.json             | nowhere.json is not there",
                "assess demo                     | demo is a folder",
                "assess demo/reading-room.json --rulebook nowhere.json | nowhere.json is not there"
            })
    void badUseIsNamedWithWhatWouldBeRight(String line, String words) {
        Run run = Run.of(line.isEmpty() ? new String[0] : line.split(" "));
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("quoin: ").contains(words).endsWith("\n");
        assertThat(run.err().lines()).hasSize(1);
    }

    @Test
    void helpIsNoFault() {
        assertThat(Run.of("--help")).isEqualTo(new Run(0, Call.USAGE, ""));
    }
}
