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
        assertThat(load).isBetween(before - 1e-9, capacity.ratedKilograms() + 1e-9);
        assertThat(capacity.likelyKilogramsAt(p)).isBetween(load, capacity.ratedKilograms() + 1e-9);
        before = load;
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
          assertThat(p).isGreaterThanOrEqualTo(0);
          assertThat(capacity.kilogramsAt(p + 1e-3)).isGreaterThanOrEqualTo(load - 1e-6);
          double lower = p * 0.999;
          assertThat(lower <= 0 || capacity.kilogramsAt(lower) < load)
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
        double p = capacity.ratedPascals() * between(0.3, 1.3);
        assertThat(capacity.pascalsFor(capacity.kilogramsAt(p))).isLessThanOrEqualTo(p + 1e-3);
      }
    }
  }

  // The label vouches for its point, so it can only lower an estimated floor: for loads up to its
  // own the floor is never above the label, for no load above the straight line. The curve bends
  // down only, as a hull of certified points does.
  @Test
  void labelOnlyLowersTheFloor() {
    int used = 0;
    for (int n = 0; n < TIRES; n++) {
      Case tire = next();
      CertifiedPoint label = tire.label();
      Capacity capacity = tire.capacity();
      if (label == null || capacity.basis() != Capacity.Basis.LABEL) {
        continue;
      }
      used++;
      double rated = capacity.ratedKilograms();
      double step = capacity.ratedPascals() / PRESSURES;
      for (int i = 1; i < PRESSURES; i++) {
        double load = rated * between(0, 1);
        double floor = capacity.pascalsFor(load);
        assertThat(floor).isLessThanOrEqualTo(load / rated * capacity.ratedPascals() + 1e-3);
        assertThat(
                load > label.load().kilograms() || floor <= label.coldPressure().pascals() + 1e-3)
            .as("no more than the label for its own load")
            .isTrue();
        double before = capacity.kilogramsAt((i - 1) * step);
        double after = capacity.kilogramsAt((i + 1) * step);
        assertThat(capacity.kilogramsAt(i * step))
            .isGreaterThanOrEqualTo((before + after) / 2 - 1e-6);
      }
    }
    assertThat(used).as("tires with a label in use").isGreaterThan(60);
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
      double part = between(0, 1);
      assertThat(capacity.kilogramsAt(part * capacity.ratedPascals()))
          .isEqualTo(part * capacity.ratedKilograms(), within(1e-6));
    }
    assertThat(seen).isGreaterThan(300);
  }
}
