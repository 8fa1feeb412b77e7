package quoin.parts;

import quoin.measure.Dimension;

/**
 * A drive. Immutable and safe for use by many threads.
 *
 * @param id its name in the parts list
 * @param torque the torque it gives, in N&middot;mm
 * @param speed how fast it turns, in rad/s
 * @param ratedTime how long it may run at a stretch, in s
 * @param turns how many turns its limit switch counts
 * @param voltage the voltage it needs, in V
 * @param current the current it takes, in A
 * @param ambient the warmest surroundings it is rated for, in K
 */
public record Drive(
        String id,
        Declared torque,
        Declared speed,
        Declared ratedTime,
        Declared turns,
        Declared voltage,
        Declared current,
        Declared ambient) {
    /** Refuses an empty id and numbers of the wrong kind. */
    public Drive {
        Ids.require(id, "drive");
        torque.require("torque", Dimension.TORQUE);
        speed.require("speed", Dimension.TURNING_SPEED);
        ratedTime.require("ratedTime", Dimension.TIME);
        turns.require("turns", Dimension.RATIO);
        voltage.require("voltage", Dimension.VOLTAGE);
        current.require("current", Dimension.CURRENT);
        ambient.require("ambient", Dimension.TEMPERATURE);
    }
}
