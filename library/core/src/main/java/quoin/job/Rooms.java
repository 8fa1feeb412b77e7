package quoin.job;

import java.util.ArrayList;
import java.util.List;
import quoin.judge.Args;
import quoin.judge.Finding;
import quoin.judge.Reason;
import quoin.judge.Step;
import quoin.rulebook.Rulebook;

/**
 * Rooms that nobody need ask for: not asked for, they stand among what was not checked. Those that compute nothing yet are
 * not verified where they are asked for.
 */
final class Rooms {
    private Rooms() {}

    private static final List<String> LATER =
            List.of("fixings", "clearance", "way-in", "heat", "roll", "fabric", "drive", "supply", "cutting");

    /** These answer for themselves. */
    private static final List<String> BUILT =
            List.of(FixingRoom.ROOM, ClearanceRoom.ROOM, PassRoom.ROOM, HeatRoom.ROOM);

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
        if (job.wayIn().isStated()) {
            asked.add(PassRoom.ROOM);
        }
        if (job.supply().isPresent()) {
            asked.add("supply");
        }
        return asked;
    }

    static List<Finding> findings(Job job, Rulebook rulebook) {
        return asked(job, rulebook).stream()
                .filter(room -> !BUILT.contains(room))
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
