package quoin.cli;

import java.util.ArrayList;
import java.util.List;
import quoin.job.Assessment;
import quoin.job.SideHoles;

/** Where the holes of each side go: running dimensions on the frame, and where they meet the opening. */
final class HolesPart {
    private static final int SIDE = 7;

    private final Assessment assessment;
    private final Lengths lengths;

    HolesPart(Assessment assessment, Lengths lengths) {
        this.assessment = assessment;
        this.lengths = lengths;
    }

    void on(Page page) {
        if (assessment.setOut().isEmpty()) {
            return;
        }
        page.heading("HOLES: on the frame, running from the left or the head end");
        for (SideHoles side : assessment.setOut()) {
            page.hanging(
                    "  " + Page.pad(side.side().text(), SIDE), run(side.holes().atMm()));
            page.hanging("  " + Page.pad("", SIDE), "in the opening at " + run(side.inOpeningMm()));
            List<Double> packers = assessment.packers().stream()
                    .filter(packer -> packer.side() == side.side())
                    .map(packer -> packer.packer().thicknessMm())
                    .toList();
            if (!packers.isEmpty()) {
                page.hanging("  " + Page.pad("", SIDE), "packed with " + run(packers));
            }
        }
    }

    private String run(List<Double> at) {
        List<String> texts = new ArrayList<>();
        for (double one : at) {
            texts.add(lengths.size(Math.rint(one)));
        }
        return String.join(", ", texts);
    }
}
