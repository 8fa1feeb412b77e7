package quoin.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Packed rows against whole ones, also where a block holds several numbers and where the last one is not full. */
class PackedProperties {
    private static double[] row(int n, Random random) {
        double[] row = new double[n];
        for (int i = 0; i < n; i++) {
            row[i] = random.nextInt(4) == 0 ? random.nextInt(-9, 10) : 0;
        }
        return row;
    }

    @Property
    void whatIsPackedIsTheRow(@ForAll @IntRange(min = 1, max = 200) int n, @ForAll int seed) {
        double[] row = row(n, new Random(seed));
        int width = Packed.width(n);
        long places = Packed.places(row, width);
        double[] kept = Packed.pack(row, places, width);
        assertThat(kept).hasSize(Packed.count(places, width));
        for (int i = 0; i < n; i++) {
            int at = Packed.indexOf(i, places, width);
            assertThat(at < 0 ? 0 : kept[at]).as("number %s", i).isEqualTo(row[i]);
        }
        double[] back = new double[n];
        Packed.addTo(back, 1, places, kept, width);
        assertThat(back).isEqualTo(row);
    }

    @Property
    void sumsAndProductsAreThoseOfTheRows(@ForAll @IntRange(min = 1, max = 200) int n, @ForAll int seed) {
        Random random = new Random(seed);
        double[] a = row(n, random);
        double[] b = row(n, random);
        int width = Packed.width(n);
        long inA = Packed.places(a, width);
        long inB = Packed.places(b, width);
        double[] keptA = Packed.pack(a, inA, width);
        double[] keptB = Packed.pack(b, inB, width);
        double[] sum = new double[Packed.count(inA | inB, width)];
        Packed.add(sum, inA | inB, 2, inA, keptA, width);
        Packed.add(sum, inA | inB, -3, inB, keptB, width);
        double product = 0;
        for (int i = 0; i < n; i++) {
            int at = Packed.indexOf(i, inA | inB, width);
            assertThat(at < 0 ? 0 : sum[at]).isEqualTo(2 * a[i] - 3 * b[i]);
            product += a[i] * b[i];
        }
        assertThat(Packed.ofProducts(inA, keptA, inB, keptB, width)).isCloseTo(product, within(1e-9));
    }
}
