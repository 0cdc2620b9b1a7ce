// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import ringleaf.spec.field.Values;
import ringleaf.spec.field.VentFields;

class SetOptionTest {

    private static Values vent(String... options) {
        Specs specs = new Specs();
        SpecDocument document =
                specs.read(Specs.SMALLEST, options).orElseThrow(() -> new AssertionError(specs.problems.text()));
        return document.mechanisms().get(0).values();
    }

    @Test
    void overridesAFieldFromTheRootOrFromTheMechanism() {
        assertThat(vent("mechanisms.vent.flaps=16").require(VentFields.FLAPS)).isEqualTo(16);
        assertThat(vent("vent.flaps=16").require(VentFields.FLAPS)).isEqualTo(16);
        assertThat(vent("vent.flaps=16", "vent.flaps=18").require(VentFields.FLAPS))
                .as("the last holds")
                .isEqualTo(18);
        assertThat(vent("vent.full-opening=2 1/2 in").require(VentFields.OPENING))
                .isEqualTo(63.5);
        assertThat(vent("vent.full-opening=3\"").require(VentFields.OPENING)).isCloseTo(76.2, within(1e-12));
        assertThat(vent("vent.outer-width={at-most: 110}")
                        .bound(VentFields.WIDTH)
                        .atMost())
                .hasValue(110);
        assertThat(vent("units=in").require(VentFields.OPENING)).isEqualTo(1625.6);
    }

    @Test
    void createsTheMapsOnItsWay() {
        Values drive = vent("vent.drive.at=90").require(VentFields.DRIVE);
        assertThat(drive.require(VentFields.AT)).isEqualTo(Math.PI / 2);
        Specs specs = new Specs();
        SpecDocument document = specs.read(
                        Specs.SMALLEST, "fabrication.blade.stock=steel-0.1", "slide.kind=slide-vent", "title=Vent: two")
                .orElseThrow(() -> new AssertionError(specs.problems.text()));
        assertThat(document.fabrication().given("blade").orElseThrow().stock().name())
                .isEqualTo("steel-0.1");
        assertThat(document.mechanisms()).hasSize(2);
        assertThat(document.slug()).isEqualTo("vent-two");
    }

    @Test
    void problemsNameTheOptionAndNoLine() {
        assertThat(Specs.messages(Specs.SMALLEST, "vent.flaps=2"))
                .isEqualTo("--set vent.flaps=2: flaps: 2 is below the least of 3 "
                        + "(two flaps cannot close a round opening)\n");
        assertThat(Specs.messages(Specs.SMALLEST, "vent.flabs=16"))
                .isEqualTo("--set vent.flabs=16: flabs: unknown key; did you mean flaps?\n");
        assertThat(Specs.messages(Specs.SMALLEST, "vnt.flaps=16"))
                .isEqualTo("--set vnt.flaps=16: there is no mechanism vnt in the spec; did you mean vent?\n");
        assertThat(Specs.messages(Specs.SMALLEST, "flaps=16"))
                .isEqualTo("--set flaps=16: there is no mechanism flaps in the spec; did you mean vent.flaps?\n");
        assertThat(Specs.messages(Specs.SMALLEST, "vent.flaps.x=1"))
                .contains("--set vent.flaps.x=1: mechanisms.vent.flaps is a single value, and has no key x");
        assertThat(Specs.messages(Specs.SMALLEST, "vent.outer-width={at-most: [}"))
                .startsWith("--set vent.outer-width={at-most: [}: not readable as YAML");
    }

    @Test
    void refusesWhatIsNoPathAndValue() {
        for (String wrong : new String[] {"", "flaps", "=5", "a..b=1", ".=1", "a.b.c.d.e.f.g.h.i=1", "../x=1"}) {
            assertThat(Specs.messages(Specs.SMALLEST, wrong)).as(wrong).startsWith("--set ");
        }
        assertThat(Specs.messages(Specs.SMALLEST, "vent.flaps=")).contains("has no value after the =");
    }
}
