package quoin.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class InfluencesTest {
    private static final Influence A = Influence.normal("a", 1);
    private static final Influence B = Influence.normal("b", 2);
    private static final Influence C = Influence.rectangular("c", 3);

    @Test
    void theUnionHasThisOrderFirst() {
        Influences union = Influences.of(List.of(A, C)).union(Influences.of(List.of(B, C)));
        assertThat(union.asList()).containsExactly(A, C, B);
        assertThat(union.size()).isEqualTo(3);
        assertThat(union.get(2)).isEqualTo(B);
    }

    @Test
    void aUnionThatAddsNothingIsTheSameInstance() {
        Influences ab = Influences.of(List.of(A, B));
        Influences abc = Influences.of(List.of(A, B, C));
        assertThat(ab.union(ab)).isSameAs(ab);
        assertThat(ab.union(Influences.of(List.of(A)))).isSameAs(ab);
        assertThat(ab.union(Influences.of(List.of(B)))).isSameAs(ab);
        assertThat(ab.union(Influences.NONE)).isSameAs(ab);
        assertThat(Influences.NONE.union(ab)).isSameAs(ab);
        assertThat(ab.union(abc)).isSameAs(abc);
        assertThat(Influences.of(List.of(B, A)).union(abc).asList()).containsExactly(B, A, C);
    }

    @Test
    void anInfluenceIsFoundByItsId() {
        Influences basis = Influences.of(List.of(A, B, C));
        assertThat(basis.indexOf(C)).isEqualTo(2);
        assertThat(basis.indexOf(Influence.normal("d", 1))).isEqualTo(-1);
        assertThat(Influences.NONE.indexOf(A)).isEqualTo(-1);
    }

    @Test
    void aLargeBasisFindsAll() {
        List<Influence> many = new ArrayList<>();
        for (int i = 0; i < 1000; i++) {
            many.add(Influence.normal("influence " + i, i));
        }
        Influences basis = Influences.of(many);
        for (int i = 0; i < 1000; i++) {
            assertThat(basis.indexOf(many.get(i))).isEqualTo(i);
        }
    }

    @Test
    void theSameIdWithOtherContentIsRefused() {
        Influences basis = Influences.of(List.of(A));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> basis.union(Influences.of(List.of(Influence.normal("a", 9)))))
                .withMessageStartingWith("influences of the same id must be the same, got Influence[id=a");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Influences.of(List.of(A, A)))
                .withMessage("influences must be distinct, got a twice");
    }

    @Test
    void basesAreEqualByTheirLists() {
        assertThat(Influences.of(List.of(A, B)))
                .isEqualTo(Influences.of(List.of(A, B)))
                .hasSameHashCodeAs(Influences.of(List.of(A, B)))
                .isNotEqualTo(Influences.of(List.of(B, A)))
                .isNotEqualTo(new Object())
                .hasToString("[" + A + ", " + B + "]");
    }

    @Test
    void badInfluencesAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Influence.normal("a", -1))
                .withMessage("standard uncertainty must be 0 or more and finite, got -1");
        assertThatIllegalArgumentException().isThrownBy(() -> Influence.normal("a", Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> Influence.normal("a", Double.POSITIVE_INFINITY));
        assertThatIllegalArgumentException().isThrownBy(() -> Influence.rectangular("a", -1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Influence.normal(" ", 1))
                .withMessage("id must not be blank, got \" \"");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> A.withDegreesOfFreedom(0))
                .withMessage("degrees of freedom must be more than 0, got 0");
        assertThatIllegalArgumentException().isThrownBy(() -> A.withDegreesOfFreedom(-1));
        assertThatIllegalArgumentException().isThrownBy(() -> A.withDegreesOfFreedom(Double.NaN));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Influence("a", Shape.NORMAL, 1, 1, "", 0.5))
                .withMessage("ratio must be from 0 to 0, got 0.5");
    }

    @Test
    void infiniteDegreesOfFreedomAreAValue() {
        assertThat(A.degreesOfFreedom()).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(A.withDegreesOfFreedom(4).degreesOfFreedom()).isEqualTo(4);
        assertThat(A.withDegreesOfFreedom(4).withDegreesOfFreedom(Double.POSITIVE_INFINITY))
                .isEqualTo(A);
    }
}
