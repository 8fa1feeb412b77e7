package quoin.cli;

import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import quoin.job.Job;
import quoin.json.JobDocument;
import quoin.json.Read;
import quoin.json.Replay;
import quoin.judge.Args;
import quoin.parts.Parts;
import quoin.rulebook.Rulebook;
import quoin.words.Words;

/** An answer made again from its job: the same bytes, or what is no longer the same. */
final class ReplayOne {
    private static final Words WORDS = Words.in(Locale.ENGLISH);

    private ReplayOne() {}

    static int run(List<String> words, PrintStream out, PrintStream err) throws BadUse {
        Call call = Call.gather(words);
        if (call.jobs().size() != 2 || !call.lines().isEmpty() || call.json()) {
            throw new BadUse("replay takes an answer and its job, write replay ANSWER JOB");
        }
        String answer = call.jobs().get(0);
        String file = call.jobs().get(1);
        byte[] recorded = Files.bytes(answer);
        byte[] bytes = Files.bytes(file);
        Problems problems = new Problems();
        Shelf shelf = Shelf.fill(call, file, problems);
        Read<Job> job = JobDocument.read(bytes);
        problems.add(file, job.problems());
        Optional<Replay> replay = Optional.empty();
        if (job.value().isPresent() && !problems.refuse()) {
            Chosen.From from = Chosen.from(job.value().get(), shelf, bytes);
            problems.add(file, from.problems());
            if (from.rulebook().isPresent() && from.parts().isPresent()) {
                replay = made(
                        answer,
                        recorded,
                        job.value().get(),
                        from.rulebook().get(),
                        from.parts().get(),
                        problems);
            }
        }
        problems.print(err);
        if (problems.refuse() || replay.isEmpty()) {
            return Main.BAD;
        }
        print(replay.get(), job.value().get(), out);
        return replay.get().isSame() ? Main.PASS : Main.FAIL;
    }

    private static Optional<Replay> made(
            String answer, byte[] recorded, Job job, Rulebook rulebook, Parts parts, Problems problems) {
        Read<Replay> read = Replay.of(recorded, job, rulebook, parts);
        problems.add(answer, read.problems());
        return read.value();
    }

    private static void print(Replay replay, Job job, PrintStream out) {
        if (replay.isSame()) {
            out.print(WORDS.text("replay.same", Args.of("job", job.id())) + "\n");
        }
        for (Replay.Difference difference : replay.differences()) {
            Args args = Args.of("pointer", difference.pointer())
                    .with("recorded", difference.recorded())
                    .with("now", difference.now());
            out.print(WORDS.text("replay." + difference.code(), args) + "\n");
        }
    }
}
