package quoin.parts;

import java.util.List;
import quoin.judge.Source;
import quoin.measure.Amount;
import quoin.measure.Dimension;

/** The invented parts of the demonstration. */
final class Sample {
    private Sample() {}

    static Declared mm(double value) {
        return Declared.of(new Amount(value, Dimension.LENGTH));
    }

    static Declared of(double value, Dimension dimension) {
        return Declared.of(new Amount(value, dimension));
    }

    static Fabric fabric(String id) {
        return new Fabric(id, of(350e-9, Dimension.AREA_MASS), mm(0.42), mm(2000), true);
    }

    static Drive drive(String id) {
        return new Drive(
                id,
                of(9000, Dimension.TORQUE),
                of(StrictMath.PI / 2, Dimension.TURNING_SPEED),
                of(300, Dimension.TIME),
                of(30, Dimension.RATIO),
                of(230, Dimension.VOLTAGE),
                of(0.6, Dimension.CURRENT),
                of(323.15, Dimension.TEMPERATURE));
    }

    static Profile profile(String id) {
        return new Profile(id, of(0.62e-3, Dimension.LINE_MASS), List.of(mm(6000)), of(23e-6, Dimension.PER_KELVIN));
    }

    static Fastener fastener(String id) {
        Declared pull = of(450, Dimension.FORCE)
                .withBasis(Declared.Basis.CHARACTERISTIC)
                .withSource(Source.of(Source.Kind.ASSUMPTION, ""));
        return new Fastener(id, mm(4), mm(40), mm(4.1), mm(10), List.of(new Pull(pull, Substrate.Kind.TIMBER, mm(25))));
    }

    static Parts parts() {
        return Parts.of(
                "heron-parts",
                "1.0.0",
                List.of(fabric("shade-a"), fabric("shade-b")),
                List.of(drive("drive-m")),
                List.of(profile("flange")),
                List.of(fastener("screw-8"), fastener("screw-10")));
    }
}
