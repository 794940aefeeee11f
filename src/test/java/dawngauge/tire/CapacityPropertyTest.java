package dawngauge.tire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import java.util.Locale;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What holds for every capacity, over seeded random tires, labels and rows. */
class CapacityPropertyTest {
  private static final int TIRES = 2_000;
  private static final int PRESSURES = 60;

  private final Random random = new Random(20270309);

  /** A tire, its capacity and the label it was given. */
  private record Case(TireSpec spec, Capacity capacity, @Nullable CertifiedPoint label) {}

  private Case next() {
    String size = pick("ST235/80R16", "LT245/75R17", "P235/70R16", "ST205/75D15", "11R22.5");
    double psi = between(30, 120);
    double kilograms = between(500, 3300);
    Tires tire = Tires.named("t").size(size).rated(text(kilograms, "kg"), text(psi, "psi"));
    if (random.nextBoolean()) {
      tire.dual(text(kilograms * between(0.85, 1), "kg"));
    }
    if (random.nextInt(3) == 0) {
      double p = psi * between(0.4, 0.8);
      double load = kilograms * between(0.4, 0.7);
      for (int i = 0; i < 4; i++) {
        tire.row(text(p, "psi"), text(load, "kg"), text(0.9 * load, "kg"));
        p += between(0.5, 15);
        load += between(0, 0.2) * kilograms;
      }
    }
    CertifiedPoint label =
        random.nextBoolean()
            ? null
            : new CertifiedPoint(
                new GaugePressure(psi * 6894.757 * between(0.3, 1.1)),
                new Mass(kilograms * between(0.2, 1.1)));
    TireSpec spec = tire.spec();
    boolean dual =
        random.nextBoolean()
            && (spec.ratedLoadDual() != null || (size.startsWith("LT") && spec.rows() == null));
    Fitment fitment = new Fitment(dual, random.nextBoolean());
    return new Case(spec, Capacity.of(spec, fitment, label).get(), label);
  }

  private String pick(String... choices) {
    return choices[random.nextInt(choices.length)];
  }

  private double between(double low, double high) {
    return low + random.nextDouble() * (high - low);
  }

  private static String text(double number, String unit) {
    return String.format(Locale.ROOT, "%.3f %s", number, unit);
  }

  @Test
  void loadNeverFallsAsPressureRisesAndNeverPassesTheRating() {
    for (int n = 0; n < TIRES; n++) {
      Capacity capacity = next().capacity();
      double before = 0;
      for (int i = 0; i <= PRESSURES; i++) {
        double p = capacity.ratedPascals() * 1.47 * i / PRESSURES;
        double load = capacity.kilogramsAt(p);
        assertThat(Double.isNaN(load)).isEqualTo(p < capacity.lowestPascals());
        if (!Double.isNaN(load)) {
          assertThat(load).isBetween(before - 1e-9, capacity.ratedKilograms() + 1e-9);
          assertThat(capacity.likelyKilogramsAt(p))
              .isBetween(load, capacity.ratedKilograms() + 1e-9);
          before = load;
        }
      }
    }
  }

  @Test
  void pressureForALoadIsTheLowestThatCarriesIt() {
    for (int n = 0; n < TIRES; n++) {
      Capacity capacity = next().capacity();
      for (int i = 0; i < PRESSURES; i++) {
        double load = capacity.ratedKilograms() * between(0, 1.2);
        double p = capacity.pascalsFor(load);
        if (load > capacity.mostKilograms() * 1.000001) {
          assertThat(p).isNaN();
        } else {
          assertThat(p).isGreaterThanOrEqualTo(capacity.lowestPascals());
          assertThat(capacity.kilogramsAt(p + 1e-3)).isGreaterThanOrEqualTo(load - 1e-6);
          double lower = p * 0.999;
          assertThat(lower < capacity.lowestPascals() || capacity.kilogramsAt(lower) < load)
              .as("a lower pressure does not carry it")
              .isTrue();
          assertThat(capacity.likelyPascalsFor(load)).isLessThanOrEqualTo(p);
        }
      }
    }
  }

  @Test
  void pressureForTheLoadAtAPressureIsNoHigherThanIt() {
    for (int n = 0; n < TIRES; n++) {
      Capacity capacity = next().capacity();
      for (int i = 0; i < PRESSURES; i++) {
        double p = capacity.lowestPascals() * between(1, 2.5);
        assertThat(capacity.pascalsFor(capacity.kilogramsAt(p))).isLessThanOrEqualTo(p + 1e-3);
      }
    }
  }

  // The label vouches for its point, so it can only lower an estimated floor, and for loads up to
  // the GAWR share the floor is never above the label.
  @Test
  void labelNeverRaisesTheFloorAboveItself() {
    int used = 0;
    for (int n = 0; n < TIRES; n++) {
      Case tire = next();
      CertifiedPoint label = tire.label();
      Capacity capacity = tire.capacity();
      if (label == null
          || capacity.fromRows()
          || label.load().kilograms() > capacity.ratedKilograms()) {
        continue;
      }
      used++;
      for (int i = 0; i < PRESSURES; i++) {
        double load = label.load().kilograms() * between(0, 1);
        double straight = Math.max(0.6, load / capacity.ratedKilograms()) * capacity.ratedPascals();
        double byLabel = label.coldPressure().pascals();
        assertThat(capacity.pascalsFor(load))
            .isLessThanOrEqualTo(byLabel + 1e-3)
            .isLessThanOrEqualTo(straight + 1e-3);
      }
    }
    assertThat(used).as("tires with a label in use").isGreaterThan(300);
  }

  @Test
  void estimateIsTheStraightLineWithoutALabel() {
    int seen = 0;
    for (int n = 0; n < TIRES; n++) {
      Case tire = next();
      Capacity capacity = tire.capacity();
      if (tire.label() != null || capacity.fromRows()) {
        continue;
      }
      seen++;
      double part = between(0.6, 1);
      assertThat(capacity.kilogramsAt(part * capacity.ratedPascals()))
          .isEqualTo(part * capacity.ratedKilograms(), within(1e-6));
    }
    assertThat(seen).isGreaterThan(300);
  }
}
