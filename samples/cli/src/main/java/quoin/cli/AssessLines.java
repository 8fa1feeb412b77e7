package quoin.cli;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quoin.job.Job;
import quoin.json.AssessmentDocument;
import quoin.json.JobDocument;
import quoin.json.Read;
import quoin.judge.Args;
import quoin.judge.Problem;

/** One job a line in, one answer a line out, in order. Not safe for use by many threads. */
final class AssessLines {
    private static final int SAY_EVERY = 100;

    private final String file;
    private final Shelf shelf;
    private final PrintStream out;
    private final PrintStream err;
    private int line;
    private int refused;
    private boolean fault;

    private AssessLines(String file, Shelf shelf, PrintStream out, PrintStream err) {
        this.file = file;
        this.shelf = shelf;
        this.out = out;
        this.err = err;
    }

    static int run(Call call, PrintStream out, PrintStream err) throws BadUse {
        String file = call.lines().get(0);
        Problems problems = new Problems();
        Shelf shelf = Shelf.fill(call, file, problems);
        try (InputStream in = new BufferedInputStream(java.nio.file.Files.newInputStream(Files.readable(file)))) {
            problems.print(err);
            return problems.refuse() ? Main.BAD : new AssessLines(file, shelf, out, err).all(new Lines(in));
        } catch (IOException e) {
            throw new BadUse(file + " cannot be read: " + e.getMessage());
        }
    }

    private int all(Lines lines) throws IOException {
        for (Optional<byte[]> next = lines.next(); next.isPresent(); next = lines.next()) {
            line++;
            out.print(answer(next.get()) + "\n");
            if (line % SAY_EVERY == 0) {
                err.print("quoin: " + line + " lines answered so far\n");
            }
        }
        err.print("quoin: " + line + " lines answered, " + refused + " of them refused\n");
        return fault ? Main.OUR_FAULT : Main.PASS;
    }

    private String answer(byte[] json) {
        Read<Job> read = JobDocument.read(json);
        List<Problem> problems = new ArrayList<>(read.problems());
        if (read.value().isPresent()) {
            try {
                Chosen chosen = Chosen.of(read.value().get(), shelf, json);
                problems.addAll(chosen.problems());
                if (chosen.assessment().isPresent()) {
                    return AssessmentDocument.write(chosen.assessment().get());
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
        refused++;
        List<Problem> placed = Problems.inLine(line, problems);
        Problems said = new Problems();
        said.add(file, placed);
        said.print(err);
        return AssessmentDocument.refused(job, placed);
    }
}
