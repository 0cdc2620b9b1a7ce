// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.step;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.part.Part;
import ringleaf.space.Pose;
import ringleaf.space.Vector;

/**
 * STEP files (ISO 10303-21 with the schema of AP214): a part as one solid where it is drawn, or an assembly of placed
 * parts. Lines and arcs stay what they are, to the last digit; lengths are millimetres.
 */
public final class StepWriter {
    private final StepFile file = new StepFile();
    private final int context;
    private final int design;
    private final int units;
    private final int home;

    /** What is written of a product: its definition and its shape. */
    private record Product(int definition, int shape) {}

    /**
     * A part in its place.
     *
     * @param name of the copy
     * @param part what it is a copy of
     * @param pose from where the part is drawn
     */
    public record Placed(String name, Part part, Pose pose) {}

    private StepWriter() {
        int protocol = file.add("APPLICATION_CONTEXT('core data for automotive mechanical design processes')");
        file.add(
                "APPLICATION_PROTOCOL_DEFINITION('international standard','automotive_design',2000,#" + protocol + ")");
        context = file.add("PRODUCT_CONTEXT('',#" + protocol + ",'mechanical')");
        design = file.add("PRODUCT_DEFINITION_CONTEXT('part definition',#" + protocol + ",'design')");
        int mm = file.add("(LENGTH_UNIT()NAMED_UNIT(*)SI_UNIT(.MILLI.,.METRE.))");
        int radian = file.add("(NAMED_UNIT(*)PLANE_ANGLE_UNIT()SI_UNIT($,.RADIAN.))");
        int steradian = file.add("(NAMED_UNIT(*)SI_UNIT($,.STERADIAN.)SOLID_ANGLE_UNIT())");
        int exact = file.add("UNCERTAINTY_MEASURE_WITH_UNIT(LENGTH_MEASURE(" + StepFile.real(Brep.NEAR) + "),#" + mm
                + ",'distance_accuracy_value','points closer than this are one')");
        units = file.add("(GEOMETRIC_REPRESENTATION_CONTEXT(3)GLOBAL_UNCERTAINTY_ASSIGNED_CONTEXT((#" + exact
                + "))GLOBAL_UNIT_ASSIGNED_CONTEXT((#" + mm + ",#" + radian + ",#" + steradian
                + "))REPRESENTATION_CONTEXT('',''))");
        home = file.frame(file.point(0, 0, 0), Vector.Z, Vector.X);
    }

    /**
     * A part where it is drawn.
     *
     * @param name of the product and its solid
     * @param description for the file to say
     * @param program the program with its version
     * @return empty where the part touches itself along an edge, so that no closed surface bounds it
     */
    public static Optional<byte[]> part(Part part, String name, String description, String program) {
        return Brep.of(part).map(brep -> {
            StepWriter writer = new StepWriter();
            writer.product(brep, name);
            return writer.file.bytes(name, description, program);
        });
    }

    /**
     * An assembly; each part's solid is written once. What has no closed surface is left out.
     *
     * @param name of the assembly
     */
    public static byte[] assembly(List<Placed> parts, String name, String description, String program) {
        StepWriter writer = new StepWriter();
        Map<Part, Optional<Product>> products = new IdentityHashMap<>();
        List<Placed> shown = new ArrayList<>();
        List<Integer> frames = new ArrayList<>(List.of(writer.home));
        for (Placed placed : parts) {
            Part part = placed.part();
            if (!products.containsKey(part)) {
                products.put(part, Brep.of(part).map(brep -> writer.product(brep, part.name())));
            }
            if (products.get(part).isPresent()) {
                shown.add(placed);
                frames.add(writer.frame(placed.pose()));
            }
        }
        int shape = writer.file.add("SHAPE_REPRESENTATION(" + StepFile.string(name) + "," + StepFile.list(frames) + ",#"
                + writer.units + ")");
        Product whole = writer.product(name, shape);
        for (int i = 0; i < shown.size(); i++) {
            Product part = products.get(shown.get(i).part()).orElseThrow();
            writer.place(whole, part, frames.get(i + 1), shown.get(i).name(), i + 1);
        }
        return writer.file.bytes(name, description, program);
    }

    private Product product(Brep brep, String name) {
        List<Integer> items = new ArrayList<>(List.of(home));
        items.addAll(StepShape.write(file, brep, name));
        int shape = file.add("ADVANCED_BREP_SHAPE_REPRESENTATION(" + StepFile.string(name) + "," + StepFile.list(items)
                + ",#" + units + ")");
        return product(name, shape);
    }

    private Product product(String name, int shape) {
        String called = StepFile.string(name);
        int product = file.add("PRODUCT(" + called + "," + called + ",'',(#" + context + "))");
        file.add("PRODUCT_RELATED_PRODUCT_CATEGORY('part',$,(#" + product + "))");
        int formation = file.add("PRODUCT_DEFINITION_FORMATION('','',#" + product + ")");
        int definition = file.add("PRODUCT_DEFINITION('design','',#" + formation + ",#" + design + ")");
        int of = file.add("PRODUCT_DEFINITION_SHAPE('','',#" + definition + ")");
        file.add("SHAPE_DEFINITION_REPRESENTATION(#" + of + ",#" + shape + ")");
        return new Product(definition, shape);
    }

    private int frame(Pose pose) {
        Vector shift = pose.shift();
        int origin = file.point(shift.x(), shift.y(), shift.z());
        return file.frame(origin, pose.turn().apply(Vector.Z), pose.turn().apply(Vector.X));
    }

    private void place(Product whole, Product part, int frame, String name, int number) {
        int use = file.add("NEXT_ASSEMBLY_USAGE_OCCURRENCE('" + number + "'," + StepFile.string(name) + ",'',#"
                + whole.definition + ",#" + part.definition + ",$)");
        int of = file.add("PRODUCT_DEFINITION_SHAPE('','',#" + use + ")");
        int move = file.add("ITEM_DEFINED_TRANSFORMATION('','',#" + home + ",#" + frame + ")");
        int relation = file.add("(REPRESENTATION_RELATIONSHIP('','',#" + part.shape + ",#" + whole.shape
                + ")REPRESENTATION_RELATIONSHIP_WITH_TRANSFORMATION(#" + move
                + ")SHAPE_REPRESENTATION_RELATIONSHIP())");
        file.add("CONTEXT_DEPENDENT_SHAPE_REPRESENTATION(#" + relation + ",#" + of + ")");
    }
}
