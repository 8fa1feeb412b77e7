package quoin.rulebook;

import quoin.judge.Args;
import quoin.measure.Amount;
import quoin.parts.Declared;
import quoin.parts.Drive;
import quoin.parts.Fabric;
import quoin.parts.Fastener;
import quoin.parts.Parts;
import quoin.parts.Profile;

/** What is wrong with a list of parts. */
final class PartsLint {
    private final Report report;

    PartsLint(Report report) {
        this.report = report;
    }

    void check(Parts parts) {
        parts.fabrics().values().forEach(this::fabric);
        parts.drives().values().forEach(this::drive);
        parts.profiles().values().forEach(this::profile);
        parts.fasteners().values().forEach(this::fastener);
    }

    private void fabric(Fabric fabric) {
        String at = "/fabrics" + Report.step(fabric.id());
        positive(fabric.areaMass(), at + "/areaMass");
        positive(fabric.thickness(), at + "/thickness");
        positive(fabric.rollWidth(), at + "/rollWidth");
    }

    private void drive(Drive drive) {
        String at = "/drives" + Report.step(drive.id());
        positive(drive.torque(), at + "/torque");
        positive(drive.speed(), at + "/speed");
        positive(drive.ratedTime(), at + "/ratedTime");
        positive(drive.turns(), at + "/turns");
        positive(drive.voltage(), at + "/voltage");
        positive(drive.current(), at + "/current");
        bounded(drive.ambient(), at + "/ambient");
    }

    private void profile(Profile profile) {
        String at = "/profiles" + Report.step(profile.id());
        positive(profile.lineMass(), at + "/lineMass");
        for (int i = 0; i < profile.stock().size(); i++) {
            positive(profile.stock().get(i), at + "/stock/" + i);
        }
        bounded(profile.expansion(), at + "/expansion");
    }

    private void fastener(Fastener fastener) {
        String at = "/fasteners" + Report.step(fastener.id());
        positive(fastener.thread(), at + "/thread");
        positive(fastener.length(), at + "/length");
        positive(fastener.hole(), at + "/hole");
        positive(fastener.countersink(), at + "/countersink");
        fastener.pulls().forEach(pull -> {
            positive(pull.value(), at + "/pull/value");
            positive(pull.depth(), at + "/pull/depth");
        });
        if (fastener.hole().value() <= fastener.thread().value()) {
            Args args = Args.of("fastener", fastener.id())
                    .with("hole", fastener.hole().value())
                    .with("thread", fastener.thread().value())
                    .with("unit", "mm");
            report.warning("hole-not-larger-than-thread", at + "/hole", args);
        }
    }

    private void positive(Declared declared, String pointer) {
        if (declared.isKnown()) {
            report.above(0, new Amount(declared.value(), declared.dimension()), pointer);
            bounded(declared, pointer);
        }
    }

    private void bounded(Declared declared, String pointer) {
        if (declared.isKnown()) {
            report.bounded(new Amount(declared.value(), declared.dimension()), pointer);
        }
    }
}
