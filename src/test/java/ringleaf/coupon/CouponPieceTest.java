// SPDX-License-Identifier: Apache-2.0
package ringleaf.coupon;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import ringleaf.curve.JtsShapes;
import ringleaf.geom.Box;
import ringleaf.geom.Path;
import ringleaf.geom.Region;
import ringleaf.geom.Tolerance;
import ringleaf.part.Layer;
import ringleaf.part.Part;
import ringleaf.spec.shared.MakingProcess;
import ringleaf.spec.shared.Stock;

/** The piece of every process and stock that goes together: whole, legible, with room for instruments. */
class CouponPieceTest {
    private static List<Coupon> all() {
        List<Coupon> all = new ArrayList<>();
        for (String stockName : MadeUpMachine.READY.stock().names()) {
            Stock stock = MadeUpMachine.READY.stock().require(stockName);
            for (String processName : stock.processes()) {
                MakingProcess process = MadeUpMachine.READY.processes().require(processName);
                if (process.makesThickness(stock.thickness().orElse(CouponPlan.USUAL_THICKNESS))) {
                    all.add(CouponPlan.of(process, stock));
                }
            }
        }
        assertThat(all).hasSizeGreaterThan(25);
        return all;
    }

    @Test
    void everyPieceHasItsOwnName() {
        Set<String> ids = new HashSet<>();
        for (Coupon coupon : all()) {
            assertThat(coupon.id()).hasSize(6);
            ids.add(coupon.id());
        }
        assertThat(ids).hasSize(all().size());
    }

    @Test
    void stepsRiseAndStraddleWhatTheCatalogueSays() {
        for (Coupon coupon : all()) {
            for (Feature.Kind kind : Feature.Kind.values()) {
                double before = 0;
                for (Feature feature : coupon.of(kind)) {
                    boolean rises = kind == Feature.Kind.BAR || feature.drawn() > before;
                    assertThat(rises)
                            .as(coupon.process() + " " + coupon.stock() + " " + feature)
                            .isTrue();
                    before = feature.drawn();
                }
            }
        }
    }

    @Test
    void outlinesAreValidAndLabelsClearOfThem() {
        for (Coupon coupon : all()) {
            String as = coupon.process() + " " + coupon.stock();
            Part part = CouponParts.of(coupon);
            Geometry plate = null;
            for (Layer layer : part.layers()) {
                Geometry whole = new GeometryFactory().createPolygon();
                double sum = 0;
                for (Region region : layer.regions()) {
                    Geometry one = JtsShapes.polygon(region, Tolerance.JUDGE);
                    assertThat(one.isValid()).as(as).isTrue();
                    sum += one.getArea();
                    whole = whole.union(one);
                }
                assertThat(whole.getArea())
                        .as(as + ": regions overlap")
                        .isCloseTo(sum, org.assertj.core.api.Assertions.within(1e-6));
                if (plate != null) {
                    // What stands on a level stands on material, all of it.
                    assertThat(whole.difference(plate).getArea()).as(as).isLessThan(1e-3);
                }
                plate = whole;
            }
            labels(coupon, part, as);
        }
    }

    private static void labels(Coupon coupon, Part part, String as) {
        CouponOutline outline = new CouponOutline(coupon);
        Geometry plate = JtsShapes.polygon(outline.plate().get(0), Tolerance.JUDGE)
                .union(JtsShapes.polygon(outline.plate().get(1), Tolerance.JUDGE));
        List<Box> boxes = new ArrayList<>();
        for (CouponLabel label : outline.labels()) {
            Box box = null;
            for (Path stroke : label.strokes()) {
                box = box == null ? stroke.box() : box.union(stroke.box());
            }
            assertThat(label.height()).as(as + " " + label.text()).isGreaterThan(0.9);
            Geometry around =
                    JtsShapes.polygon(Region.of(ringleaf.geom.Contour.rectangle(box.grown(0.4))), Tolerance.JUDGE);
            assertThat(around.difference(plate).getArea())
                    .as(as + ": " + label.text() + " meets an edge")
                    .isLessThan(1e-9);
            for (Box other : boxes) {
                assertThat(box.grown(0.25).meets(other.grown(0.25)))
                        .as(as + ": " + label.text() + " meets another")
                        .isFalse();
            }
            boxes.add(box);
        }
        assertThat(part.marks().isEmpty()).isEqualTo(coupon.layers());
    }
}
