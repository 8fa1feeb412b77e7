package quoin.job;

import java.util.ArrayList;
import java.util.List;
import quoin.judge.Args;
import quoin.judge.Finding;
import quoin.judge.Reason;
import quoin.judge.Step;
import quoin.rulebook.Rulebook;

/** Rooms that compute nothing yet: asked for, they are not verified; else they stand among what was not checked. */
final class Rooms {
    private Rooms() {}

    private static final List<String> LATER =
            List.of("fixings", "clearance", "way-in", "heat", "roll", "fabric", "drive", "supply", "cutting");

    private static List<String> asked(Job job, Rulebook rulebook) {
        List<String> asked = new ArrayList<>();
        if (rulebook.fixings().isPresent()) {
            asked.add("fixings");
        }
        if (!job.opening().obstacles().isEmpty() || !job.opening().moving().isEmpty()) {
            asked.add("clearance");
        }
        if (job.heat().isStated()) {
            asked.add("heat");
        }
        if (job.supply().isPresent()) {
            asked.add("supply");
        }
        return asked;
    }

    static List<Finding> findings(Job job, Rulebook rulebook) {
        return asked(job, rulebook).stream()
                .map(room -> Finding.undecided(room, Reason.NOT_VERIFIED)
                        .plusStep(Step.of("room-not-built", Args.of("room", room))))
                .toList();
    }

    static List<String> notChecked(Job job, Rulebook rulebook) {
        List<String> rest = new ArrayList<>(LATER);
        rest.removeAll(asked(job, rulebook));
        return List.copyOf(rest);
    }
}
