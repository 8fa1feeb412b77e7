package quoin.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import quoin.measure.Dimension;

class PartsProperties {
    @Property(tries = 50)
    void theOrderOfPartsLeavesNoTrace(@ForAll Random random) {
        List<Fabric> fabrics = new ArrayList<>(List.of(Sample.fabric("a"), Sample.fabric("b"), Sample.fabric("c")));
        List<Fastener> fasteners = new ArrayList<>(List.of(Sample.fastener("s"), Sample.fastener("t")));
        Parts before = Parts.of("p", "1", fabrics, List.of(), List.of(), fasteners);
        Collections.shuffle(fabrics, random);
        Collections.shuffle(fasteners, random);
        Parts after = Parts.of("p", "1", fabrics, List.of(), List.of(), fasteners);
        assertThat(after.digest()).isEqualTo(before.digest());
        assertThat(after.canonicalText()).isEqualTo(before.canonicalText());
    }

    @Property
    void anyChangedNumberChangesTheDigest(@ForAll("changes") UnaryOperator<Parts> change) {
        assertThat(change.apply(Sample.parts()).digest())
                .isNotEqualTo(Sample.parts().digest());
    }

    /** The least change a double can show, in every number of every part, and every text and fact. */
    @Provide
    Arbitrary<UnaryOperator<Parts>> changes() {
        Fabric f = Sample.fabric("shade-a");
        Drive d = Sample.drive("drive-m");
        Profile p = Sample.profile("flange");
        Fastener s = Sample.fastener("screw-8");
        Pull pull = s.pulls().get(0);
        return Arbitraries.of(
                fabric(new Fabric(f.id(), up(f.areaMass()), f.thickness(), f.rollWidth(), f.mayTurn())),
                fabric(new Fabric(f.id(), f.areaMass(), up(f.thickness()), f.rollWidth(), f.mayTurn())),
                fabric(new Fabric(f.id(), f.areaMass(), f.thickness(), up(f.rollWidth()), f.mayTurn())),
                fabric(new Fabric(f.id(), f.areaMass(), f.thickness(), f.rollWidth(), false)),
                fabric(Sample.fabric("shade-c")),
                drive(0),
                drive(1),
                drive(2),
                drive(3),
                drive(4),
                drive(5),
                drive(6),
                drive(7),
                profile(new Profile(p.id(), up(p.lineMass()), p.stock(), p.expansion())),
                profile(new Profile(p.id(), p.lineMass(), List.of(up(p.stock().get(0))), p.expansion())),
                profile(new Profile(p.id(), p.lineMass(), p.stock(), up(p.expansion()))),
                fastener(new Fastener(s.id(), up(s.thread()), s.length(), s.hole(), s.countersink(), s.pulls())),
                fastener(new Fastener(s.id(), s.thread(), up(s.length()), s.hole(), s.countersink(), s.pulls())),
                fastener(new Fastener(s.id(), s.thread(), s.length(), up(s.hole()), s.countersink(), s.pulls())),
                fastener(new Fastener(s.id(), s.thread(), s.length(), s.hole(), up(s.countersink()), s.pulls())),
                pull(s, new Pull(up(pull.value()), pull.in(), pull.depth())),
                pull(s, new Pull(pull.value().withBasis(Declared.Basis.DESIGN), pull.in(), pull.depth())),
                pull(s, new Pull(pull.value(), Substrate.Kind.STEEL, pull.depth())),
                pull(s, new Pull(pull.value(), pull.in(), Declared.unknown(Dimension.LENGTH))));
    }

    private static Declared up(Declared number) {
        return new Declared(StrictMath.nextUp(number.value()), number.dimension(), number.basis(), number.source());
    }

    private static UnaryOperator<Parts> fabric(Fabric first) {
        return parts -> {
            List<Fabric> fabrics = new ArrayList<>(parts.fabrics().values());
            fabrics.set(0, first);
            return with(
                    parts,
                    fabrics,
                    List.copyOf(parts.drives().values()),
                    List.copyOf(parts.profiles().values()));
        };
    }

    private static UnaryOperator<Parts> drive(int field) {
        return parts -> {
            Drive d = Sample.drive("drive-m");
            Drive changed = new Drive(
                    field == 0 ? "drive-n" : d.id(),
                    field == 1 ? up(d.torque()) : d.torque(),
                    field == 2 ? up(d.speed()) : d.speed(),
                    field == 3 ? up(d.ratedTime()) : d.ratedTime(),
                    field == 4 ? up(d.turns()) : d.turns(),
                    field == 5 ? up(d.voltage()) : d.voltage(),
                    field == 6 ? up(d.current()) : d.current(),
                    field == 7 ? up(d.ambient()) : d.ambient());
            List<Fabric> fabrics = List.copyOf(parts.fabrics().values());
            return with(
                    parts,
                    fabrics,
                    List.of(changed),
                    List.copyOf(parts.profiles().values()));
        };
    }

    private static UnaryOperator<Parts> profile(Profile profile) {
        return parts -> with(
                parts,
                List.copyOf(parts.fabrics().values()),
                List.copyOf(parts.drives().values()),
                List.of(profile));
    }

    private static Parts with(Parts parts, List<Fabric> fabrics, List<Drive> drives, List<Profile> profiles) {
        return Parts.of(
                parts.id(),
                parts.version(),
                fabrics,
                drives,
                profiles,
                List.copyOf(parts.fasteners().values()));
    }

    private static UnaryOperator<Parts> pull(Fastener s, Pull pull) {
        return fastener(new Fastener(s.id(), s.thread(), s.length(), s.hole(), s.countersink(), List.of(pull)));
    }

    private static UnaryOperator<Parts> fastener(Fastener first) {
        return parts -> {
            List<Fastener> fasteners = new ArrayList<>(parts.fasteners().values());
            fasteners.set(0, first);
            return Parts.of(
                    parts.id(),
                    parts.version(),
                    List.copyOf(parts.fabrics().values()),
                    List.copyOf(parts.drives().values()),
                    List.copyOf(parts.profiles().values()),
                    fasteners);
        };
    }
}
