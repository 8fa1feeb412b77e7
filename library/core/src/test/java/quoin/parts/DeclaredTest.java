package quoin.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import quoin.judge.Source;
import quoin.measure.Dimension;

class DeclaredTest {
    @Test
    void whatNobodyDeclaredIsNotKnown() {
        Declared unknown = Declared.unknown(Dimension.FORCE);
        assertThat(unknown.isKnown()).isFalse();
        assertThat(unknown.value()).isNaN();
        assertThat(unknown).isEqualTo(Declared.unknown(Dimension.FORCE));
    }

    @Test
    void basisAndSourceAreKeptApartFromTheNumber() {
        Source test = Source.of(Source.Kind.TESTED, "pull test 3 of 3");
        Declared pull = Sample.of(180, Dimension.FORCE)
                .withBasis(Declared.Basis.RECOMMENDED)
                .withSource(test);
        assertThat(pull.value()).isEqualTo(180);
        assertThat(pull.isKnown()).isTrue();
        assertThat(pull.basis()).isEqualTo(Declared.Basis.RECOMMENDED);
        assertThat(pull.source()).isEqualTo(test);
        assertThat(Sample.mm(-0.0)).isEqualTo(Sample.mm(0.0));
    }

    @Test
    void anInfinityIsRefused() {
        assertThatThrownBy(() -> new Declared(
                        Double.POSITIVE_INFINITY, Dimension.FORCE, Declared.Basis.DECLARED, Source.UNSTATED))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("declared value must be finite, got Infinity");
    }

    @Test
    void everyBasisIsFoundByItsText() {
        for (Declared.Basis basis : Declared.Basis.values()) {
            assertThat(Declared.Basis.find(basis.text())).contains(basis);
        }
        assertThat(Declared.Basis.find("Declared")).isEmpty();
    }
}
