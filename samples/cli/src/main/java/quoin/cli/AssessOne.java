package quoin.cli;

import java.io.PrintStream;
import java.util.Optional;
import quoin.job.Assessment;
import quoin.job.Job;
import quoin.json.AssessmentDocument;
import quoin.json.JobDocument;
import quoin.json.Read;
import quoin.judge.Verdict;

/** One job document in, one sheet or one JSON answer out. */
final class AssessOne {
    private AssessOne() {}

    static int run(Call call, PrintStream out, PrintStream err) throws BadUse {
        String file = call.jobs().get(0);
        byte[] bytes = Files.bytes(file);
        Problems problems = new Problems();
        Shelf shelf = Shelf.fill(call, file, problems);
        Read<Job> read = JobDocument.read(bytes);
        problems.add(file, read.problems());
        Optional<Assessment> assessment = Optional.empty();
        if (read.value().isPresent() && !problems.refuse()) {
            Chosen chosen = Chosen.of(read.value().get(), shelf, bytes);
            problems.add(file, chosen.problems());
            assessment = chosen.assessment();
        }
        problems.print(err);
        if (problems.refuse() || assessment.isEmpty()) {
            return Main.BAD;
        }
        out.print(call.json() ? AssessmentDocument.write(assessment.get()) + "\n" : JobSheet.of(assessment.get()));
        return code(assessment.get().verdict());
    }

    private static int code(Verdict verdict) {
        return switch (verdict) {
            case PASS -> Main.PASS;
            case UNDECIDED -> Main.UNDECIDED;
            case FAIL -> Main.FAIL;
        };
    }
}
