package quoin.fixing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import quoin.measure.Uncertain;
import quoin.opening.LineFit.Station;

/** Stacks against all stacks, counted out one by one. */
class PackersProperties {
    private int best;
    private int pieces;

    @Property
    void noStackThatGoesInIsThickerOrAsThickOfFewerPieces(
            @ForAll @Size(min = 1, max = 4) List<@IntRange(min = 1, max = 12) Integer> halves,
            @ForAll @IntRange(min = 0, max = 120) int quarters) {
        List<Double> thicknesses = new ArrayList<>();
        halves.forEach(half -> thicknesses.add(half / 2.0));
        best = 0;
        pieces = 0;
        count(halves, 0, quarters / 2, 0, 0);
        Station gap = new Station(0, Uncertain.exact(quarters / 4.0));
        Packer packer = Packers.of(thicknesses).fill(List.of(gap)).get(0);
        assertThat(packer.thicknessMm()).isEqualTo(best / 2.0);
        assertThat(packer.pieces()).hasSize(pieces);
        assertThat(packer.left().value()).isEqualTo(quarters / 4.0 - best / 2.0);
        assertThat(thicknesses).containsAll(packer.pieces());
    }

    private void count(List<Integer> kinds, int kind, int room, int sum, int used) {
        if (sum > best || (sum == best && used < pieces)) {
            best = sum;
            pieces = used;
        }
        for (int k = kind; k < kinds.size(); k++) {
            if (kinds.get(k) <= room) {
                count(kinds, k, room - kinds.get(k), sum + kinds.get(k), used + 1);
            }
        }
    }
}
