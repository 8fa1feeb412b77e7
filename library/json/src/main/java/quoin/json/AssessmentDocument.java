package quoin.json;

import java.util.List;
import quoin.job.Assessment;
import quoin.job.Receipt;
import quoin.judge.Problem;

/** The answer as a document: {@code quoin-assessment/1}. */
public final class AssessmentDocument {
    /** The name of the format. */
    public static final String FORMAT = "quoin-assessment/1";

    private AssessmentDocument() {}

    /**
     * Writes an assessment.
     *
     * @param assessment the assessment
     * @return the answer on one line, keys in a fixed order, without a line feed
     */
    public static String write(Assessment assessment) {
        return new AssessmentWriter(assessment).write();
    }

    /**
     * Writes the answer to a job that could not be read.
     *
     * @param job the job's id; empty where it could not be read
     * @param problems what is wrong with it
     * @return the answer on one line, without a line feed
     */
    public static String refused(String job, List<Problem> problems) {
        Out out = Out.line();
        out.start();
        out.field("format", FORMAT);
        if (job.isEmpty()) {
            out.nothing("job");
        } else {
            out.field("job", job);
        }
        out.field("library", Receipt.LIBRARY);
        out.field("verdict", "refused");
        out.array("problems", problems, AssessmentDocument::problem);
        out.end();
        return out.text();
    }

    static void problem(Out out, Problem problem) {
        out.field("code", problem.code());
        out.field("severity", problem.severity() == Problem.Severity.ERROR ? "error" : "warning");
        out.field("pointer", problem.pointer());
        if (problem.line() > 0) {
            out.field("line", problem.line());
            out.field("column", problem.column());
        }
        out.args(problem.args());
    }
}
