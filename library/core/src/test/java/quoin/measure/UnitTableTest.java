package quoin.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class UnitTableTest {
    @Test
    void oneSpellingEach() {
        assertThat(UnitTable.all())
                .extracting(UnitTable.Entry::text)
                .doesNotHaveDuplicates()
                .hasSize(25);
        assertThat(UnitTable.find("MM")).isEmpty();
        assertThat(UnitTable.find("mm").orElseThrow().dimension()).isEqualTo(Dimension.LENGTH);
        assertThat(UnitTable.suggestion(Dimension.RATIO)).isEqualTo("%");
    }

    @Test
    void aSquareMillimetreIsAnArea() {
        // a unit library reads mm2 as a thousandth of a square metre
        assertThat(UnitTable.find("mm2").orElseThrow().factor()).isEqualTo(1);
        assertThat(UnitTable.find("mm2").orElseThrow().dimension()).isEqualTo(Dimension.AREA);
    }
}
