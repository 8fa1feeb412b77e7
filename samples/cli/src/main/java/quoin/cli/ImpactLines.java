package quoin.cli;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quoin.job.Impact;
import quoin.job.ImpactTotals;
import quoin.job.Job;
import quoin.json.ImpactDocument;
import quoin.json.JobDocument;
import quoin.json.Read;
import quoin.judge.Args;
import quoin.judge.Problem;
import quoin.parts.Parts;
import quoin.rulebook.Rulebook;

/** Jobs, one a line, by two rulebooks: one line out for each, in order, then the totals. Not safe for use by many threads. */
final class ImpactLines {
    private static final int SAY_EVERY = 1000;

    private final String file;
    private final Shelf shelf;
    private final Rulebook before;
    private final Rulebook after;
    private final boolean json;
    private final PrintStream out;
    private final PrintStream err;
    private ImpactTotals totals = ImpactTotals.NONE;
    private boolean fault;

    private ImpactLines(String file, Shelf shelf, boolean json, PrintStream out, PrintStream err) {
        this.file = file;
        this.shelf = shelf;
        this.before = shelf.rulebooks().get(0);
        this.after = shelf.rulebooks().get(1);
        this.json = json;
        this.out = out;
        this.err = err;
    }

    static int run(List<String> words, PrintStream out, PrintStream err) throws BadUse {
        Call call = Call.gather(words);
        if (call.jobs().size() != 3
                || !call.lines().isEmpty()
                || !call.rulebooks().isEmpty()) {
            throw new BadUse("impact takes two rulebooks and a file of jobs, write impact OLD NEW JOBS.ndjson");
        }
        String file = call.jobs().get(2);
        Problems problems = new Problems();
        Call rules = new Call(List.of(), List.of(), call.jobs().subList(0, 2), call.parts(), call.json());
        Shelf shelf = Shelf.fill(rules, file, problems);
        try (InputStream in = new BufferedInputStream(java.nio.file.Files.newInputStream(Files.readable(file)))) {
            problems.print(err);
            return problems.refuse()
                    ? Main.BAD
                    : new ImpactLines(file, shelf, call.json(), out, err).all(new Lines(in));
        } catch (IOException e) {
            throw new BadUse(file + " cannot be read: " + e.getMessage());
        }
    }

    private int all(Lines lines) throws IOException {
        for (Optional<byte[]> next = lines.next(); next.isPresent(); next = lines.next()) {
            out.print(line(next.get()) + "\n");
            if (totals.jobs() % SAY_EVERY == 0) {
                err.print("quoin: " + totals.jobs() + " jobs compared so far\n");
            }
        }
        out.print(json ? ImpactDocument.write(totals, before, after) + "\n" : ImpactText.of(totals, before, after));
        err.print("quoin: " + totals.jobs() + " jobs compared, " + totals.refused() + " of them refused\n");
        return fault ? Main.OUR_FAULT : Main.PASS;
    }

    private String line(byte[] bytes) {
        Read<Job> read = JobDocument.read(bytes);
        List<Problem> problems = new ArrayList<>(read.problems());
        if (read.value().isPresent()) {
            try {
                Job job = read.value().get();
                Optional<Parts> parts = Chosen.parts(job, shelf, bytes, problems);
                if (parts.isPresent()) {
                    Impact impact = Impact.of(job, before, after, parts.get());
                    totals = totals.plus(impact);
                    return json ? ImpactDocument.write(impact) : ImpactText.of(impact);
                }
            } catch (RuntimeException e) {
                fault = true;
                problems.add(Problem.error("fault-of-ours", "", Args.of("got", e.toString()))
                        .at(1, 1));
            }
        }
        return refuse(read.id(), problems);
    }

    private String refuse(String job, List<Problem> problems) {
        totals = totals.plusRefused();
        int line = (int) totals.jobs();
        List<Problem> placed = Problems.inLine(line, problems);
        Problems said = new Problems();
        said.add(file, placed);
        said.print(err);
        return json ? ImpactDocument.refused(job, placed) : ImpactText.refused(job, line);
    }
}
