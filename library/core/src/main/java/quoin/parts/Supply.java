package quoin.parts;

import quoin.measure.Dimension;

/**
 * The electric supply at the opening. Immutable and safe for use by many threads.
 *
 * @param kind what it is, such as {@code mains}
 * @param voltage its voltage, in V
 * @param cable the cross-section of one conductor, in mm&sup2;
 * @param cableLength how long the cable is, one way, in mm
 */
public record Supply(String kind, Declared voltage, Declared cable, Declared cableLength) {
    /** Refuses an empty kind and numbers of the wrong kind. */
    public Supply {
        Ids.require(kind, "supply");
        voltage.require("voltage", Dimension.VOLTAGE);
        cable.require("cable", Dimension.AREA);
        cableLength.require("cableLength", Dimension.LENGTH);
    }
}
