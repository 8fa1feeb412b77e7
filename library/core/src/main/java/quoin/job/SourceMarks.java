package quoin.job;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import quoin.judge.Args;
import quoin.judge.Caution;
import quoin.judge.Source;
import quoin.judge.Step;
import quoin.parts.Declared;
import quoin.parts.Parts;
import quoin.rulebook.Rulebook;

/**
 * Marks of what a result rests on: a source that was due for review before the job was taken, one of which that cannot be
 * told, and one that lacks a date the rulebook asks for. Dates are compared with the job's own, never with a clock.
 */
final class SourceMarks {
    private final List<String> asks;
    private final Job job;

    SourceMarks(Rulebook rulebook, Job job) {
        this.asks = rulebook.sourceAsks();
        this.job = job;
    }

    /** Of a clause and of the numbers that its steps used. */
    List<Caution> of(String clause, Source own, List<Step> steps) {
        Set<Source> sources = new LinkedHashSet<>(List.of(own));
        steps.stream().map(Step::source).filter(Source::isStated).forEach(sources::add);
        return marks(clause, sources);
    }

    /** Of the parts that the job chose. */
    List<Caution> of(Parts parts) {
        List<Caution> all = new ArrayList<>();
        job.choose().parts().forEach((choice, id) -> {
            if (Parts.CHOICES.contains(choice)) {
                Set<Source> sources = new LinkedHashSet<>();
                parts.declared(choice, id).stream().map(Declared::source).forEach(sources::add);
                all.addAll(marks(id, sources));
            }
        });
        return all;
    }

    private List<Caution> marks(String of, Set<Source> sources) {
        Set<Caution> marks = new LinkedHashSet<>();
        for (Source source : sources) {
            Args args = source.ref().isEmpty()
                    ? Args.of("of", of)
                    : Args.of("of", of).with("ref", source.ref());
            if (!source.reviewBy().isEmpty() && job.taken().isEmpty()) {
                marks.add(mark("source-review-not-known", args.with("reviewBy", source.reviewBy())));
            } else if (!source.reviewBy().isEmpty() && source.reviewBy().compareTo(job.taken()) < 0) {
                marks.add(mark(
                        "source-past-review",
                        args.with("reviewBy", source.reviewBy()).with("taken", job.taken())));
            }
            if (asks.contains("verifiedOn") && source.verifiedOn().isEmpty()) {
                marks.add(mark("source-not-verified", args));
            }
            if (asks.contains("reviewBy") && source.reviewBy().isEmpty()) {
                marks.add(mark("source-without-review", args));
            }
        }
        return List.copyOf(marks);
    }

    private static Caution mark(String code, Args args) {
        return new Caution(code, Caution.Severity.NOTE, args);
    }
}
