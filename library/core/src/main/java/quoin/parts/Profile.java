package quoin.parts;

import java.util.List;
import quoin.measure.Dimension;

/**
 * A profile cut from bars. Immutable and safe for use by many threads.
 *
 * @param id its name in the parts list
 * @param lineMass its mass, in kg/mm
 * @param stock the lengths of bar it comes in, in mm
 * @param expansion its coefficient of linear expansion, in 1/K
 */
public record Profile(String id, Declared lineMass, List<Declared> stock, Declared expansion) {
    /** Refuses an empty id and numbers of the wrong kind; copies the list. */
    public Profile {
        Ids.require(id, "profile");
        lineMass.require("lineMass", Dimension.LINE_MASS);
        stock = List.copyOf(stock);
        stock.forEach(length -> length.require("stock", Dimension.LENGTH));
        expansion.require("expansion", Dimension.PER_KELVIN);
    }
}
