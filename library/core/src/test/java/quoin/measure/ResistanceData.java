package quoin.measure;

import java.util.List;

/** Standard: JCGM 100:2008, H.2, Table H.2: five rows of voltage in V, current in A, phase in rad. */
final class ResistanceData {
    static final double[][] ROWS = {
        {5.007, 19.663e-3, 1.0456},
        {4.994, 19.639e-3, 1.0438},
        {5.005, 19.640e-3, 1.0468},
        {4.990, 19.685e-3, 1.0428},
        {4.999, 19.678e-3, 1.0433}
    };

    private ResistanceData() {}

    static Uncertain resistance(List<Uncertain> vip) {
        return vip.get(0).times(vip.get(2).cos()).dividedBy(vip.get(1));
    }

    static Uncertain reactance(List<Uncertain> vip) {
        return vip.get(0).times(vip.get(2).sin()).dividedBy(vip.get(1));
    }

    static Uncertain impedance(List<Uncertain> vip) {
        return vip.get(0).dividedBy(vip.get(1));
    }
}
