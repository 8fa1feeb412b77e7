package quoin.cli;

import java.util.List;
import java.util.Optional;
import quoin.job.Assessment;
import quoin.job.Choices;
import quoin.job.Job;
import quoin.job.Rulebooks;
import quoin.judge.Args;
import quoin.judge.Problem;
import quoin.parts.Parts;
import quoin.rulebook.Rulebook;

/** Takes from the shelf what a job chose, and assesses it. */
final class Chosen {
    private Chosen() {}

    /** The assessment; empty, with a problem that says what is not at hand, where something is not. */
    static Optional<Assessment> assess(Job job, Shelf shelf, String file, Problems problems) {
        Choices choose = job.choose();
        Optional<Rulebook> rulebook = Rulebooks.pick(choose, job.taken(), shelf.rulebooks());
        if (rulebook.isEmpty()) {
            problems.add(file, List.of(noRulebook(choose, shelf)));
        }
        Optional<Parts> parts = choose.partsId().isEmpty()
                ? Optional.of(Parts.NONE)
                : shelf.parts().stream()
                        .filter(list -> list.id().equals(choose.partsId()))
                        .findFirst();
        if (parts.isEmpty()) {
            problems.add(file, List.of(noParts(choose, shelf)));
        }
        return rulebook.isEmpty() || parts.isEmpty()
                ? Optional.empty()
                : Optional.of(Assessment.of(job, rulebook.get(), parts.get()));
    }

    private static Problem noRulebook(Choices choose, Shelf shelf) {
        String wanted = choose.rulebookVersion().isEmpty()
                ? choose.rulebookId()
                : choose.rulebookId() + " " + choose.rulebookVersion();
        List<String> known = shelf.rulebooks().stream()
                .map(book -> book.id() + " " + book.version())
                .toList();
        return Problem.error(
                "no-rulebook", "/choose/rulebook", Args.of("got", wanted).with("known", known));
    }

    private static Problem noParts(Choices choose, Shelf shelf) {
        List<String> known = shelf.parts().stream().map(Parts::id).toList();
        return Problem.error(
                "no-parts", "/choose/parts", Args.of("got", choose.partsId()).with("known", known));
    }
}
