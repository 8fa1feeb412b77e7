package quoin.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import quoin.clearance.Moisture.Timber;
import quoin.clearance.Moisture.Way;
import quoin.clearance.Thermal.Movement;

class ThermalTest {
    private static final double ZERO = 273.15;

    /** Coefficients from secondary sources; growths over 50 K computed outside this project. To the last digit given. */
    @ParameterizedTest
    @CsvSource({
        "23e-6, 1000, 1.150",
        "23e-6, 2400, 2.760",
        "23e-6, 3000, 3.450",
        "12e-6, 2400, 1.440",
        "70e-6, 3000, 10.500",
        "9e-6, 1000, 0.450",
        "5e-6, 2400, 0.600"
    })
    void partsGrow(double perKelvin, double length, double growth) {
        assertThat(Thermal.growthMm(length, perKelvin, 50)).isCloseTo(growth, within(1e-9));
        assertThat(Thermal.growthMm(length, perKelvin, -50)).isCloseTo(-growth, within(1e-9));
    }

    /** Over 50 K, computed outside this project: aluminium on timber and on steel, 3000 mm; PVC on aluminium, 2400 mm. */
    @ParameterizedTest
    @CsvSource({"3000, 23e-6, 5e-6, 2.700", "3000, 23e-6, 12e-6, 1.650", "2400, 70e-6, 23e-6, 5.640"})
    void partsMoveAgainstEachOther(double length, double one, double other, double movement) {
        Movement sliding = Thermal.sliding(length, one - other, 293.15, 293.15, 343.15);
        assertThat(sliding.growMm()).isCloseTo(movement, within(1e-9));
        assertThat(sliding.shrinkMm()).isZero();
    }

    /** Rail of 3 m on timber held in the middle, fixed at 15, from -10 to 60 degC: -0.675 and +1.215 mm at each end. */
    @Test
    void aRailHeldInTheMiddle() {
        Movement end = Thermal.sliding(1500, 23e-6 - 5e-6, ZERO + 15, ZERO - 10, ZERO + 60);
        assertThat(end.shrinkMm()).isCloseTo(0.675, within(1e-9));
        assertThat(end.growMm()).isCloseTo(1.215, within(1e-9));
        // a screw of 4 mm, set out to 0.5 mm: 4 + 0.675 + 1.215 + 1
        assertThat(end.slotMm(4, 0.5)).isCloseTo(6.89, within(1e-9));
    }

    /** Fixed on the coldest day it only grows, on the hottest it only shrinks; what grows less moves the other way. */
    @Test
    void movementLiesOnOneSideWhereTheFixingWasAtAnEnd() {
        assertThat(Thermal.sliding(1000, 20e-6, 263, 263, 333)).isEqualTo(new Movement(0, 1000 * 20e-6 * 70));
        assertThat(Thermal.sliding(1000, 20e-6, 333, 263, 333).growMm()).isZero();
        Movement less = Thermal.sliding(1000, -20e-6, 283, 263, 333);
        assertThat(less.shrinkMm()).isCloseTo(1.0, within(1e-9));
        assertThat(less.growMm()).isCloseTo(0.4, within(1e-9));
        assertThat(Thermal.sliding(1000, 20e-6, 400, 263, 333).growMm()).isZero();
    }

    /** Aluminium, E 70 000 N/mm2, held hard over 50 K: 80.5 N/mm2. */
    @Test
    void restraint() {
        assertThat(Thermal.restraint(70_000, 23e-6, 50)).isCloseTo(80.5, within(1e-9));
    }

    /** An aluminium opening of 3000 mm at 20 degC, read by a steel tape, both at 35 degC: 0.52 mm long against 20 degC. */
    @Test
    void aWarmTapeReadsShortAndAWarmOpeningIsLongerStill() {
        double atHand = 3000 + Thermal.growthMm(3000, 23e-6, 15);
        double read = atHand / (1 + 15 * Thermal.STEEL_TAPE_PER_KELVIN);
        assertThat(read - 3000).isCloseTo(0.52, within(0.005));
        assertThat(Thermal.trueLengthMm(read, Thermal.STEEL_TAPE_PER_KELVIN, ZERO + 35))
                .isCloseTo(atHand, within(1e-9));
        assertThat(Thermal.trueLengthMm(3000, 11.5e-6, Thermal.REFERENCE_K)).isEqualTo(3000);
    }

    @ParameterizedTest
    @EnumSource
    void materialsHaveARange(Material material) {
        assertThat(material.perKelvin().value()).isBetween(3e-6, 80e-6);
        assertThat(material.perKelvin().standardUncertainty()).isGreaterThan(0);
        assertThat(material.perKelvin().minus(material.perKelvin()).standardUncertainty())
                .as("one and the same error")
                .isZero();
    }

    /** EN 1991-1-5, annex C (secondary source): timber across the grain 30 to 70; u = 20 / sqrt 3. */
    @Test
    void timberAcrossTheGrain() {
        assertThat(Material.TIMBER_ACROSS.perKelvin().value()).isCloseTo(50e-6, within(1e-18));
        assertThat(Material.TIMBER_ACROSS.perKelvin().standardUncertainty())
                .isCloseTo(20e-6 / StrictMath.sqrt(3), within(1e-18));
    }

    /** A printed worked example (secondary source): 5 in of white oak, 3 %: 0.055 in; by the coefficient 0.05475. */
    @Test
    void timberSwellsAcrossTheGrain() {
        assertThat(Moisture.changeMm(5 * 25.4, Timber.WHITE_OAK, 8, 11)).isCloseTo(0.05475 * 25.4, within(1e-9));
        assertThat(Moisture.changeMm(127, Timber.BEECH, 9, 9)).isZero();
        assertThat(Moisture.changeMm(100, Timber.DOUGLAS_FIR, 12, 9)).isCloseTo(-0.801, within(1e-9));
    }

    /** Computed from the printed formulas outside this project: 145 mm from 18 to 10 %: 142.451; 45 mm thick: 44.336. */
    @Test
    void sawnSoftwoodShrinks() {
        assertThat(145 + Moisture.softwoodChangeMm(145, Way.WIDTH, 18, 10)).isCloseTo(142.451, within(0.0005));
        assertThat(45 + Moisture.softwoodChangeMm(45, Way.THICKNESS, 18, 10)).isCloseTo(44.336, within(0.0005));
    }

    @Test
    void whatIsOutOfRangeIsRefused() {
        assertThatThrownBy(() -> Thermal.growthMm(-1, 23e-6, 50))
                .hasMessage("length must be 0 mm or more and finite, got -1.0 mm");
        assertThatThrownBy(() -> Thermal.growthMm(1, Double.NaN, 50))
                .hasMessage("coefficient must be finite, got NaN /K");
        assertThatThrownBy(() -> Thermal.sliding(1, 1e-6, -5, 263, 333))
                .hasMessage("temperature of fixing must be above 0 K and finite, got -5.0 K");
        assertThatThrownBy(() -> Thermal.sliding(1, 1e-6, 293, 333, 263))
                .hasMessage("coldest must not be above the hottest of 263.0 K, got 333.0 K");
        assertThatThrownBy(() -> Thermal.restraint(0, 1e-6, 1))
                .hasMessage("modulus must be above 0 N/mm2 and finite, got 0.0 N/mm2");
        assertThatThrownBy(() -> new Movement(0, 1).slotMm(0, 0))
                .hasMessage("screw must be above 0 mm and finite, got 0.0 mm");
        assertThatThrownBy(() -> Moisture.changeMm(100, Timber.BEECH, 8, 29))
                .hasMessage("moisture to must be from 0 to 28 %, got 29.0 %");
        assertThatThrownBy(() -> Moisture.softwoodChangeMm(100, Way.WIDTH, 7, 12))
                .hasMessage("moisture from must be from 8 to 19 %, got 7.0 %");
        assertThatThrownBy(() -> Moisture.changeMm(Double.NaN, Timber.BEECH, 8, 9))
                .hasMessage("size across must be above 0 mm and finite, got NaN mm");
    }
}
