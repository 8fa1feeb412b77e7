package quoin.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ExtremeTest {
    private static final List<Extreme.Part> PARTS =
            List.of(part("a", 2), part("b", -3), part("c", 1), part("d", -3), part("e", 3));

    @Test
    void theGoverningPartGivesTheValue() {
        assertThat(Extreme.least(PARTS).value()).isEqualTo(-3);
        assertThat(Extreme.greatest(PARTS).value()).isEqualTo(3);
        assertThat(Extreme.largestInSize(PARTS).value()).isEqualTo(-3);
    }

    @Test
    void theFirstAmongEqualsGoverns() {
        assertThat(Extreme.least(PARTS).governing().names()).containsExactly("b");
        assertThat(Extreme.largestInSize(PARTS).governing().names()).containsExactly("b");
    }

    @Test
    void thePartsAreKeptAndCopied() {
        List<Extreme.Part> parts = new ArrayList<>(PARTS);
        Extreme least = Extreme.least(parts);
        parts.clear();
        assertThat(least.parts()).isEqualTo(PARTS);
        assertThat(least.kind()).isEqualTo(Extreme.Kind.LEAST);
    }

    @Test
    void thereMustBeAPart() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Extreme.least(List.of()))
                .withMessage("number of parts must be 1 or more, got 0");
    }

    private static Extreme.Part part(String name, double value) {
        return new Extreme.Part(List.of(name), Uncertain.exact(value));
    }
}
