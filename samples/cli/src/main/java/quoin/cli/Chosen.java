package quoin.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quoin.job.Assessment;
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
    /**
     * What a job chose, taken from the shelf.
     *
     * @param rulebook the rulebook; empty where it is not at hand
     * @param parts the parts; empty where they are not at hand
     * @param problems what is not at hand
     */
    record From(Optional<Rulebook> rulebook, Optional<Parts> parts, List<Problem> problems) {}

    static Chosen of(Job job, Shelf shelf, byte[] json) {
        From from = from(job, shelf, json);
        return from.rulebook().isEmpty() || from.parts().isEmpty()
                ? new Chosen(Optional.empty(), from.problems())
                : new Chosen(
                        Optional.of(Assessment.of(
                                job, from.rulebook().get(), from.parts().get())),
                        from.problems());
    }

    static From from(Job job, Shelf shelf, byte[] json) {
        List<Problem> problems = new ArrayList<>();
        Rulebooks.whyNone(job.choose(), job.taken(), shelf.rulebooks())
                .ifPresent(problem -> problems.add(Spot.locate(json, problem)));
        Optional<Rulebook> rulebook = Rulebooks.pick(job.choose(), job.taken(), shelf.rulebooks());
        Optional<Parts> parts = parts(job, shelf, json, problems);
        return new From(rulebook, parts, problems);
    }

    /** The parts that a job chose; what is wrong with them goes to {@code problems}. */
    static Optional<Parts> parts(Job job, Shelf shelf, byte[] json, List<Problem> problems) {
        String wanted = job.choose().partsId();
        if (wanted.isEmpty()) {
            return Optional.of(Parts.NONE);
        }
        List<Parts> found = shelf.parts(wanted);
        if (found.size() == 1) {
            return Optional.of(found.get(0));
        }
        Args got = Args.of("got", wanted);
        Problem problem = found.isEmpty()
                ? Problem.error("no-parts", "/choose/parts", got.with("known", shelf.partsIds()))
                : Problem.error("parts-ambiguous", "/choose/parts", got.with("known", digests(found)));
        problems.add(Spot.locate(json, problem));
        return Optional.empty();
    }

    private static List<String> digests(List<Parts> lists) {
        return lists.stream().map(list -> list.version() + " " + list.digest()).toList();
    }
}
