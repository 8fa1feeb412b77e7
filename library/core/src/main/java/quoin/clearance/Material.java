package quoin.clearance;

import java.util.Locale;
import quoin.measure.Influence;
import quoin.measure.Uncertain;

/**
 * What frames and openings are made of, and how much it grows in heat.
 *
 * <p>Ranges of printed values, from secondary sources and EN 1991-1-5, annex C (its range for timber across the grain from a
 * secondary source, the rest of that annex from memory). What a maker declares for a profile goes before.
 */
public enum Material {
    /** Aluminium. */
    ALUMINIUM(23e-6, 24e-6),
    /** Structural steel. */
    STEEL(11.5e-6, 12e-6),
    /** Stainless steel. */
    STAINLESS_STEEL(16e-6, 17e-6),
    /** Hard PVC. */
    PVC(70e-6, 80e-6),
    /** Window glass. */
    GLASS(8.5e-6, 9e-6),
    /** Concrete. */
    CONCRETE(10e-6, 12e-6),
    /** Brickwork. */
    BRICK(5e-6, 6e-6),
    /** Timber along the grain. */
    TIMBER_ALONG(3e-6, 5e-6),
    /** Timber across the grain, where moisture moves it far more. */
    TIMBER_ACROSS(30e-6, 70e-6);

    private final double least;
    private final double greatest;

    Material(double least, double greatest) {
        this.least = least;
        this.greatest = greatest;
    }

    /**
     * Its coefficient of linear expansion.
     *
     * @return the middle of the printed values, in 1/K, anything between them equally likely; one and the same error wherever
     *     the same material is meant
     */
    public Uncertain perKelvin() {
        String id = "expansion.".concat(name().toLowerCase(Locale.ROOT).replace('_', '-'));
        return Uncertain.of(least + (greatest - least) / 2, Influence.rectangular(id, (greatest - least) / 2));
    }
}
