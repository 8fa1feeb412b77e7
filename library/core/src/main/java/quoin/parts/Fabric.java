package quoin.parts;

import quoin.measure.Dimension;

/**
 * A fabric from the roll. Immutable and safe for use by many threads.
 *
 * @param id its name in the parts list
 * @param areaMass its mass, in kg/mm&sup2;
 * @param thickness its thickness, in mm
 * @param rollWidth how wide the roll is, in mm
 * @param mayTurn whether it may be cut with the width of the roll along the travel
 */
public record Fabric(String id, Declared areaMass, Declared thickness, Declared rollWidth, boolean mayTurn) {
    /** Refuses an empty id and numbers of the wrong kind. */
    public Fabric {
        Ids.require(id, "fabric");
        areaMass.require("areaMass", Dimension.AREA_MASS);
        thickness.require("thickness", Dimension.LENGTH);
        rollWidth.require("rollWidth", Dimension.LENGTH);
    }
}
