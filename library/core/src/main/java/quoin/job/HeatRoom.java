package quoin.job;

import java.util.List;
import java.util.Optional;
import quoin.clearance.HeatGaps;
import quoin.clearance.HeatGaps.Expansion;
import quoin.clearance.HeatGaps.Temperatures;
import quoin.clearance.Material;
import quoin.judge.Args;
import quoin.judge.Bound;
import quoin.judge.Conformity;
import quoin.judge.Finding;
import quoin.judge.Reason;
import quoin.judge.Source;
import quoin.judge.Step;
import quoin.measure.Dimension;
import quoin.measure.Estimate;
import quoin.measure.Influence;
import quoin.measure.Uncertain;
import quoin.opening.Held;
import quoin.opening.Opening;
import quoin.parts.Parts;
import quoin.parts.Profile;
import quoin.parts.Substrate;
import quoin.rulebook.Rulebook;

/**
 * Heat in one job: the frame's material by the chosen profile, the surround's by what the sides are made of.
 *
 * <p>Asked for where the job states temperatures. Where no bound is set on the least gap in heat, the frame must at least not
 * be squeezed: 0 mm, decided as the rulebook decides.
 */
final class HeatRoom {
    static final String ROOM = "heat";
    static final String FIGURE = "heat.gap.least";

    private static final Source ASSUMED =
            Source.of(Source.Kind.ASSUMPTION, "from nothing to steel: the surround is not known or mixed");
    /** Half of what steel, the least favourable surround in the cold, grows; the other end is no growth at all. */
    private static final double ANY = 6e-6;

    private final Job job;
    private final Parts parts;

    HeatRoom(Job job, Parts parts) {
        this.job = job;
        this.parts = parts;
    }

    /** {@return the least gap over the temperatures of service; empty where something for it is not known} */
    Optional<Estimate> leastGap(Opening opening, Held held, Uncertain width, Uncertain length) {
        Optional<Uncertain> frame = frame();
        if (frame.isEmpty() || !isComplete(job.heat())) {
            return Optional.empty();
        }
        Temperatures temperatures = new Temperatures(
                job.heat().measuredK(), job.heat().fromK(), job.heat().toK());
        Expansion expansion = new Expansion(frame.get(), surround());
        return HeatGaps.least(opening, held, width, length, expansion, temperatures)
                .map(least -> least);
    }

    /** {@return what the job's temperatures do to its frame; empty where the job states none or a bound judges it} */
    Optional<Finding> finding(Rulebook rulebook, Optional<Estimate> leastGap, boolean agrees) {
        boolean bounded =
                rulebook.bounds().stream().anyMatch(bound -> bound.figure().equals(FIGURE));
        if (!job.heat().isStated() || (bounded && leastGap.isPresent())) {
            return Optional.empty();
        }
        if (leastGap.isEmpty()) {
            return Optional.of(unknown());
        }
        Finding finding = Conformity.check(ROOM, leastGap.get(), Dimension.LENGTH, Bound.atLeast(0), rulebook.decide())
                .withFigure(FIGURE)
                .plusStep(step());
        return Optional.of(agrees ? finding : finding.asUndecided(Reason.READINGS_DISAGREE));
    }

    private Finding unknown() {
        if (!isComplete(job.heat())) {
            return Finding.undecided(ROOM, Reason.NOT_VERIFIED).plusStep(Step.of("temperatures-not-known", Args.NONE));
        }
        return frame().isEmpty()
                ? Finding.undecided(ROOM, Reason.NOT_VERIFIED).plusStep(Step.of("expansion-not-known", Args.NONE))
                : Finding.undecided(ROOM, Reason.NOT_DETERMINED)
                        .plusStep(Step.of("figure-not-determined", Args.of("figure", FIGURE)));
    }

    private Step step() {
        Args args = Args.of("frame", frame().map(Uncertain::value).orElse(0.0))
                .with("surround", surround().value())
                .with("unit", "/K");
        return new Step("grows-in-heat", args, isTimber() ? Source.UNSTATED : ASSUMED);
    }

    private static boolean isComplete(Heat heat) {
        return !Double.isNaN(heat.measuredK()) && !Double.isNaN(heat.fromK()) && !Double.isNaN(heat.toK());
    }

    private Optional<Uncertain> frame() {
        String chosen = job.choose().parts().getOrDefault("profile", "");
        Profile profile = parts.profiles().get(chosen);
        return profile == null || !profile.expansion().isKnown()
                ? Optional.empty()
                : Optional.of(Uncertain.exact(profile.expansion().value()));
    }

    private Uncertain surround() {
        return isTimber()
                ? Material.TIMBER_ALONG.perKelvin()
                : Uncertain.of(ANY, Influence.rectangular("expansion.surround", ANY));
    }

    private boolean isTimber() {
        List<Substrate> sides = List.copyOf(job.opening().sides().values());
        return sides.size() == 4
                && sides.stream()
                        .allMatch(side ->
                                side.kind() == Substrate.Kind.TIMBER || side.kind() == Substrate.Kind.BOARD_ON_TIMBER);
    }
}
