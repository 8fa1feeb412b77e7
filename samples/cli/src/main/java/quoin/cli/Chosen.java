package quoin.cli;

import java.util.ArrayList;
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

/**
 * What a job chose, taken from the shelf and assessed.
 *
 * @param assessment the assessment; empty where something is not at hand
 * @param problems what is not at hand
 */
record Chosen(Optional<Assessment> assessment, List<Problem> problems) {
    static Chosen of(Job job, Shelf shelf, byte[] json) {
        Choices choose = job.choose();
        List<Problem> problems = new ArrayList<>();
        Optional<Rulebook> rulebook = Rulebooks.pick(choose, job.taken(), shelf.rulebooks());
        if (rulebook.isEmpty()) {
            problems.add(Spot.locate(json, noRulebook(choose, shelf)));
        }
        Optional<Parts> parts = choose.partsId().isEmpty() ? Optional.of(Parts.NONE) : shelf.parts(choose.partsId());
        if (parts.isEmpty()) {
            problems.add(Spot.locate(json, noParts(choose, shelf)));
        }
        return rulebook.isEmpty() || parts.isEmpty()
                ? new Chosen(Optional.empty(), problems)
                : new Chosen(Optional.of(Assessment.of(job, rulebook.get(), parts.get())), problems);
    }

    private static Problem noRulebook(Choices choose, Shelf shelf) {
        StringBuilder wanted = new StringBuilder(choose.rulebookId());
        if (!choose.rulebookVersion().isEmpty()) {
            wanted.append(' ').append(choose.rulebookVersion());
        }
        if (!choose.rulebookDigest().isEmpty()) {
            wanted.append(" with digest ").append(choose.rulebookDigest());
        }
        List<String> known = shelf.rulebooks().stream()
                .map(book -> book.id() + " " + book.version() + " of " + book.effective())
                .toList();
        return Problem.error(
                "no-rulebook",
                "/choose/rulebook",
                Args.of("got", wanted.toString()).with("known", known));
    }

    private static Problem noParts(Choices choose, Shelf shelf) {
        Args args = Args.of("got", choose.partsId()).with("known", shelf.partsIds());
        return Problem.error("no-parts", "/choose/parts", args);
    }
}
