package quoin.parts;

import java.util.List;
import quoin.measure.Dimension;

/**
 * A fastener and the hole it needs. Immutable and safe for use by many threads.
 *
 * @param id its name in the parts list
 * @param thread the outer diameter of its thread, in mm
 * @param length its length, in mm
 * @param hole the diameter of the hole it goes through, in mm
 * @param countersink the diameter of the countersink, in mm
 * @param pulls what it holds against being pulled out
 */
public record Fastener(
        String id, Declared thread, Declared length, Declared hole, Declared countersink, List<Pull> pulls) {
    /** Refuses an empty id and numbers of the wrong kind; copies the list. */
    public Fastener {
        Ids.require(id, "fastener");
        thread.require("thread", Dimension.LENGTH);
        length.require("length", Dimension.LENGTH);
        hole.require("hole", Dimension.LENGTH);
        countersink.require("countersink", Dimension.LENGTH);
        pulls = List.copyOf(pulls);
    }
}
