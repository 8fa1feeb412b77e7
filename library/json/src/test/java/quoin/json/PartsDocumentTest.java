package quoin.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static quoin.json.Examples.changed;
import static quoin.json.Examples.parts;
import static quoin.json.Examples.utf8;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import quoin.judge.Source;
import quoin.measure.Amount;
import quoin.measure.Dimension;
import quoin.parts.Declared;
import quoin.parts.Drive;
import quoin.parts.Fabric;
import quoin.parts.Fastener;
import quoin.parts.Parts;
import quoin.parts.Profile;
import quoin.parts.Pull;
import quoin.parts.Substrate;

/**
 * The values expected are read off the example of the format's description by eye, in base units; conversions are exact to
 * the last digits of a double, hence 1e-12 of the value.
 */
class PartsDocumentTest {
    private final Parts list = parts(Examples.PARTS);

    private static Declared length(double mm) {
        return Declared.of(new Amount(mm, Dimension.LENGTH));
    }

    @Test
    void readsTheHead() {
        assertThat(list.id()).isEqualTo("heron-parts");
        assertThat(list.version()).isEqualTo("1.0.0");
    }

    @Test
    void readsFabrics() {
        Fabric fabric = list.fabrics().get("shade-a");
        assertThat(fabric.areaMass().value()).isCloseTo(350e-9, within(350e-21));
        assertThat(fabric.thickness()).isEqualTo(length(0.42));
        assertThat(fabric.rollWidth()).isEqualTo(length(2000));
        assertThat(fabric.mayTurn()).isTrue();
    }

    @Test
    void readsDrives() {
        Drive drive = list.drives().get("drive-m");
        assertThat(drive.torque().value()).isEqualTo(9000);
        assertThat(drive.speed().value()).isCloseTo(15 * 2 * Math.PI / 60, within(1.6e-12));
        assertThat(drive.ratedTime().value()).isEqualTo(300);
        assertThat(drive.turns().value()).isEqualTo(30);
        assertThat(drive.voltage().value()).isEqualTo(230);
        assertThat(drive.current().value()).isEqualTo(0.6);
        assertThat(drive.ambient().value()).isEqualTo(323.15);
    }

    @Test
    void readsProfiles() {
        Profile profile = list.profiles().get("flange");
        assertThat(profile.lineMass().value()).isCloseTo(0.62e-3, within(0.62e-15));
        assertThat(profile.stock()).containsExactly(length(6000));
        assertThat(profile.expansion().value()).isEqualTo(23e-6);
    }

    @Test
    void readsFasteners() {
        Fastener screw = list.fasteners().get("screw-8");
        assertThat(screw.hole()).isEqualTo(length(4.1));
        Declared pull = Declared.of(new Amount(450, Dimension.FORCE))
                .withBasis(Declared.Basis.CHARACTERISTIC)
                .withSource(Source.of(Source.Kind.ASSUMPTION, ""));
        assertThat(screw.pulls()).containsExactly(new Pull(pull, Substrate.Kind.TIMBER, length(25)));
    }

    @Test
    void whatIsWrittenReadsBackTheSame() {
        String written = PartsDocument.write(list);
        assertThat(parts(written)).isEqualTo(list);
        assertThat(parts(written).digest()).isEqualTo(list.digest());
        assertThat(written)
                .doesNotContain("\r")
                .endsWith("}\n")
                .contains("\n  \"id\": \"heron-parts\",\n", "\"turns\": 30", "\"expansion\": \"0.000023 /K\"");
    }

    @Test
    void everyDemoListReadsBackTheSame() {
        List<String> lists = Examples.demo(PartsDocument.FORMAT);
        assertThat(lists).isNotEmpty();
        for (String text : lists) {
            assertThat(parts(PartsDocument.write(parts(text)))).isEqualTo(parts(text));
        }
    }

    @Test
    void readsAStream() throws IOException {
        assertThat(PartsDocument.read(new ByteArrayInputStream(utf8(Examples.PARTS)))
                        .value())
                .contains(list);
    }

    @Test
    void anEmptyListIsAList() {
        Parts empty = parts("{ \"format\": \"quoin-parts/1\", \"id\": \"p\", \"version\": \"1\" }");
        assertThat(empty).isEqualTo(Parts.of("p", "1", List.of(), List.of(), List.of(), List.of()));
        assertThat(parts(PartsDocument.write(empty))).isEqualTo(empty);
    }

    @Test
    void whatNobodyDeclaredIsUnknown() {
        Parts sparse = parts(changed(Examples.PARTS, "\"torque\": \"9 N.m\", ", ""));
        assertThat(sparse.drives().get("drive-m").torque().isKnown()).isFalse();
        assertThat(parts(PartsDocument.write(sparse))).isEqualTo(sparse);
    }

    @Test
    void aNumberMayCarryItsBasisAndSource() {
        Parts list = parts(
                changed(
                        Examples.PARTS,
                        "\"torque\": \"9 N.m\"",
                        "\"torque\": { \"value\": \"9 N.m\", \"basis\": \"design\", \"source\": { \"kind\": \"tested\", \"ref\": \"t 1\" } }"));
        Declared torque = list.drives().get("drive-m").torque();
        assertThat(torque.basis()).isEqualTo(Declared.Basis.DESIGN);
        assertThat(torque.source()).isEqualTo(Source.of(Source.Kind.TESTED, "t 1"));
        assertThat(parts(PartsDocument.write(list))).isEqualTo(list);
    }

    @Test
    void aBareNumberIsOnlyACount() {
        String text = changed(Examples.PARTS, "\"length\": \"40 mm\"", "\"length\": 40");
        assertThat(PartsDocument.read(utf8(text)).problems()).singleElement().satisfies(problem -> {
            assertThat(problem.code()).isEqualTo("missing-unit");
            assertThat(problem.pointer()).isEqualTo("/fasteners/screw-8/length");
        });
    }

    @Test
    void aHoleNotLargerThanItsThreadIsWorthALook() {
        String text = changed(Examples.PARTS, "\"hole\": \"4.1 mm\"", "\"hole\": \"4.0 mm\"");
        Read<Parts> read = PartsDocument.read(utf8(text));
        assertThat(read.value()).isPresent();
        assertThat(read.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.code()).isEqualTo("hole-not-larger-than-thread");
            assertThat(problem.line()).isPositive();
        });
    }
}
