package quoin.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import quoin.measure.Dimension;

class SubstrateTest {
    @Test
    void everyKindIsFoundByItsText() {
        for (Substrate.Kind kind : Substrate.Kind.values()) {
            assertThat(Substrate.Kind.find(kind.text())).contains(kind);
        }
        assertThat(Substrate.Kind.find("board-on-timber")).contains(Substrate.Kind.BOARD_ON_TIMBER);
        assertThat(Substrate.Kind.find("cheese")).isEmpty();
    }

    @Test
    void ofAnUnknownSideNothingIsKnown() {
        assertThat(Substrate.UNKNOWN.kind()).isEqualTo(Substrate.Kind.UNKNOWN);
        assertThat(Substrate.UNKNOWN.thickness().isKnown()).isFalse();
        assertThat(Substrate.UNKNOWN.timbers()).isEmpty();
    }

    @Test
    void aTimberMayLackItsDoubtButNotItsWidth() {
        assertThat(new Substrate.Timber(100, 47, Double.NaN).uMm()).isNaN();
        assertThatThrownBy(() -> new Substrate.Timber(100, 0, 5))
                .hasMessage("width must be above 0 mm and finite, got 0.0 mm");
        assertThatThrownBy(() -> new Substrate.Timber(100, Double.NaN, 5))
                .hasMessage("width must be above 0 mm and finite, got NaN mm");
        assertThatThrownBy(() -> new Substrate.Timber(Double.NaN, 47, 5))
                .hasMessage("at must be a finite number, got NaN mm");
        assertThatThrownBy(() -> new Substrate.Timber(100, 47, -1))
                .hasMessage("u must be 0 mm or more and finite, got -1.0 mm");
    }

    @Test
    void aThicknessIsALength() {
        Declared mm = Sample.mm(45);
        assertThatThrownBy(() -> new Substrate(
                        Substrate.Kind.TIMBER, Sample.of(1, Dimension.MASS), mm, List.of(), "", List.of()))
                .hasMessage("thickness must be of the kind length, got mass");
    }
}
