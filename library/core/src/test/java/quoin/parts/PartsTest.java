package quoin.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import quoin.measure.Dimension;

class PartsTest {
    @Test
    void partsAreFoundByNameInTheirOrder() {
        Parts parts = Sample.parts();
        assertThat(parts.fabrics().keySet()).containsExactly("shade-a", "shade-b");
        assertThat(parts.drives()).containsEntry("drive-m", Sample.drive("drive-m"));
        assertThat(parts.profiles()).containsOnlyKeys("flange");
        assertThat(parts.fasteners().keySet()).containsExactly("screw-8", "screw-10");
        assertThat(parts.id()).isEqualTo("heron-parts");
        assertThat(parts.version()).isEqualTo("1.0.0");
        assertThat(parts).hasToString("heron-parts 1.0.0");
    }

    @Test
    void everyChoiceHasItsNames() {
        Parts parts = Sample.parts();
        assertThat(Parts.CHOICES.stream().map(parts::names).map(List::copyOf))
                .containsExactly(
                        List.of("shade-a", "shade-b"),
                        List.of("drive-m"),
                        List.of("flange"),
                        List.of("screw-8", "screw-10"));
        assertThatThrownBy(() -> parts.names("colour"))
                .hasMessage("choice must be one of [fabric, drive, profile, fastener], got colour");
    }

    @Test
    void aNameIsListedOnce() {
        Drive drive = Sample.drive("drive-m");
        assertThatThrownBy(() -> Parts.of("p", "1", List.of(), List.of(drive, drive), List.of(), List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("drive drive-m must be listed once, got it more than once");
    }

    @Test
    void anEmptyNameIsRefused() {
        assertThatThrownBy(() -> Parts.of("", "1", List.of(), List.of(), List.of(), List.of()))
                .hasMessage("parts list must have a name, got an empty text");
        assertThatThrownBy(() -> Parts.of("p", "", List.of(), List.of(), List.of(), List.of()))
                .hasMessage("version of parts list p must have a name, got an empty text");
        assertThatThrownBy(() -> Sample.fabric("")).hasMessage("fabric must have a name, got an empty text");
    }

    @Test
    void aNumberOfTheWrongKindIsRefusedWithBothKinds() {
        Declared mm = Sample.mm(1);
        assertThatThrownBy(() -> new Fabric("f", mm, mm, mm, false))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("areaMass must be of the kind area mass, got length");
        assertThatThrownBy(() -> new Profile(
                        "p",
                        Sample.of(1, Dimension.LINE_MASS),
                        List.of(Sample.of(1, Dimension.MASS)),
                        Sample.of(1, Dimension.PER_KELVIN)))
                .hasMessage("stock must be of the kind length, got mass");
        assertThatThrownBy(() -> new Pull(mm, Substrate.Kind.TIMBER, mm))
                .hasMessage("value must be of the kind force, got length");
    }

    @Test
    void noPartsAtAll() {
        assertThat(Parts.NONE.id()).isEmpty();
        assertThat(Parts.NONE.names("drive")).isEmpty();
        assertThat(Parts.NONE.digest())
                .startsWith("sha256:")
                .isNotEqualTo(Sample.parts().digest());
    }

    @Test
    void equalPartsAreEqual() {
        assertThat(Sample.parts()).isEqualTo(Sample.parts()).hasSameHashCodeAs(Sample.parts());
        assertThat(Sample.parts()).isNotEqualTo(Parts.NONE).isNotEqualTo("heron-parts 1.0.0");
    }

    @Test
    void theSupplyKnowsItsCable() {
        Supply supply = new Supply(
                "mains",
                Sample.of(230, Dimension.VOLTAGE),
                Sample.of(1, Dimension.AREA),
                Declared.unknown(Dimension.LENGTH));
        assertThat(supply.cableLength().isKnown()).isFalse();
        assertThatThrownBy(() -> new Supply("", supply.voltage(), supply.cable(), supply.cableLength()))
                .hasMessage("supply must have a name, got an empty text");
    }
}
