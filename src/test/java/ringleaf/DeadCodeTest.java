// SPDX-License-Identifier: Apache-2.0
package ringleaf;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaFieldAccess;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * Nothing in main code is there for tests alone, or for nobody: what the program can never come to, going from its main
 * method by every call, reference and override, is dead. Constants that the compiler copies leave no trace in class
 * files and are not looked at.
 */
class DeadCodeTest {
    /** What stays although main code never comes to it, by the beginning of its name, and why. */
    private static final Map<String, String> KEPT = Map.ofEntries(
            Map.entry("mechanism.belt.DrivePart.what", "tells parts apart: compared as a whole"),
            Map.entry("mechanism.belt.DrivePart.wheel", "tells parts apart: compared as a whole"),
            Map.entry("mechanism.gear.Shaft.number", "tells shafts apart: compared as a whole"),
            Map.entry("draw.chart.Scale.bare(", "the chart of what explore costs, in src/jmh, has an axis of ratios"),
            Map.entry(
                    "draw.chart.Scale.ofRatios(", "the chart of what explore costs, in src/jmh, has an axis of ratios"),
            Map.entry("draw.chart.Scale.withTicks(", "the chart of what explore costs, in src/jmh, names its ticks"),
            Map.entry(
                    "draw.sheet.SheetPages.span(", "spans told by a kind are held against spans found on the outline"),
            Map.entry("draw.step.Brep$Key.", "key of a map, read by its equality"),
            Map.entry("draw.step.StepWriter$Placed", "assemblies, written before figures are made of bodies"),
            Map.entry("draw.step.StepWriter$Product.", "assemblies, written before figures are made of bodies"),
            Map.entry("draw.step.StepWriter.assembly(", "assemblies, written before figures are made of bodies"),
            Map.entry("draw.step.StepWriter.frame(", "assemblies, written before figures are made of bodies"),
            Map.entry("draw.step.StepWriter.place(", "assemblies, written before figures are made of bodies"),
            Map.entry("firmware.ServoTable.pulse(", "the firmware's own arithmetic, which errors are measured with"),
            Map.entry("part.Built.", "build orders of the presets are held to leave nothing over, joined in one"),
            Map.entry("leaf.Play.NONE", "blades without play are what closed forms and outlines are compared on"),
            Map.entry("mechanism.AsBuilt$Limit.unit", "says beside each limit what its margins are in"),
            Map.entry("mechanism.aperture.BladePlans$Remembered$BelowKey.", "key of a map, read by its equality"),
            Map.entry("mechanism.aperture.BladePlans$Remembered$Key.", "key of a map, read by its equality"),
            Map.entry("mechanism.aperture.PlannedAperture$Swept.", "key of a map, read by its equality"),
            Map.entry("solid.", "distances in space, made before the mechanisms whose bodies leave the plane"),
            Map.entry("space.", "distances in space, made before the mechanisms whose bodies leave the plane"),
            Map.entry("spec.Cutting.place", "where the user said it, as all that is read has"),
            Map.entry("spec.MechanismSpec.place", "where the user said it, as all that is read has"),
            Map.entry("spec.SpecReader.read(spec.text.SpecSource, java.util.List)", "the whole of reading in one step"),
            Map.entry("spec.shared.Bearing.entry", "every value of every catalogue is held to have a source"),
            Map.entry("spec.shared.Belt.entry", "every value of every catalogue is held to have a source"),
            Map.entry("spec.shared.Board.entry", "every value of every catalogue is held to have a source"),
            Map.entry("spec.shared.Contact.entry", "every value of every catalogue is held to have a source"),
            Map.entry("spec.shared.Dowel.entry", "every value of every catalogue is held to have a source"),
            Map.entry("spec.shared.Entry.source", "every value of every catalogue is held to have a source"),
            Map.entry("spec.shared.LinearBearing.entry", "every value of every catalogue is held to have a source"),
            Map.entry("spec.shared.Rod.entry", "every value of every catalogue is held to have a source"),
            Map.entry("spec.shared.SharedFiles.NONE", "the ready catalogues alone, with none of the user's"),
            Map.entry("spec.text.SpecRefused.problems", "what an exception carries besides its words"),
            Map.entry("tooth.ContactPath.ratio(", "published contact ratios are those of the tips alone"),
            Map.entry("tooth.GearOutline.deviation(double)", "how far made flanks are off, in what measures them"),
            Map.entry("tooth.GearOutline.toothSpace(", "one space, for what is rolled or laid into it"),
            Map.entry("tooth.InternalOutline.form(", "what an outline was made of, beside it"),
            Map.entry("tooth.LewisFactor.", "the section behind the factor, held to lie in the root"),
            Map.entry("verify.StateReport.", "single states are held against closed forms; findings tell the worst"),
            Map.entry("verify.Verdict.", "single states are held against closed forms; findings tell the worst"));

    private final Set<JavaCodeUnit> reached = new HashSet<>();
    private final Set<JavaClass> classes = new HashSet<>();
    private final Set<JavaField> read = new HashSet<>();
    private final Deque<JavaCodeUnit> open = new ArrayDeque<>();

    @Test
    void mainCodeIsThereForMainCode() {
        reach(ArchitectureTest.CODE.get("ringleaf.cli.Main").getMethods().stream()
                .filter(method -> method.getName().equals("main"))
                .findFirst()
                .orElseThrow());
        while (!open.isEmpty()) {
            follow(open.remove());
        }
        Set<String> dead = new TreeSet<>();
        for (JavaClass type : ArchitectureTest.CODE) {
            if (type.getSimpleName().equals("package-info") || isOfASwitch(type)) {
                continue;
            }
            if (!classes.contains(type) && !isHolder(type)) {
                dead.add(name(type));
                continue;
            }
            for (JavaCodeUnit unit : type.getCodeUnits()) {
                if (!reached.contains(unit) && !isMadeByTheCompiler(unit)) {
                    dead.add(name(unit));
                }
            }
            for (JavaField field : type.getFields()) {
                if (!read.contains(field) && !isCopied(field) && !isMadeByTheCompiler(field)) {
                    dead.add(name(type) + "." + field.getName());
                }
            }
        }
        Set<String> unexplained = new TreeSet<>(dead);
        unexplained.removeIf(name -> KEPT.keySet().stream().anyMatch(name::startsWith));
        assertThat(unexplained)
                .as("nothing in main code comes to it: take it out, or say in KEPT why it stays")
                .isEmpty();
        assertThat(KEPT.keySet())
                .as("reasons in KEPT for what main code comes to by now: take them out")
                .allMatch(kept -> dead.stream().anyMatch(name -> name.startsWith(kept)));
    }

    private void reach(JavaCodeUnit unit) {
        if (reached.add(unit)) {
            open.add(unit);
        }
    }

    private void reach(JavaClass type) {
        if (!type.getName().startsWith("ringleaf.") || type.isArray() || !classes.add(type)) {
            return;
        }
        type.getStaticInitializer().ifPresent(this::reach);
        type.getRawSuperclass().ifPresent(this::reach);
        type.getRawInterfaces().forEach(this::reach);
        // Whatever others than we may call on it: run, compare, equals.
        for (JavaMethod method : type.getMethods()) {
            if (overridesForeign(method)) {
                reach(method);
            }
        }
    }

    private void follow(JavaCodeUnit unit) {
        reach(unit.getOwner());
        if (unit instanceof JavaMethod method) {
            for (JavaClass sub : unit.getOwner().getAllSubclasses()) {
                sub.tryGetMethod(method.getName(), types(method)).ifPresent(this::reach);
            }
        }
        for (JavaAccess<?> access : unit.getAccessesFromSelf()) {
            reach(access.getTargetOwner());
            AccessTarget target = access.getTarget();
            if (access instanceof JavaFieldAccess field) {
                if (field.getAccessType() == JavaFieldAccess.AccessType.GET) {
                    field.getTarget().resolveMember().ifPresent(read::add);
                }
            } else {
                target.resolveMember().ifPresent(member -> {
                    if (member instanceof JavaCodeUnit code
                            && member.getOwner().getName().startsWith("ringleaf.")) {
                        reach(code);
                    }
                });
            }
        }
        unit.getReferencedClassObjects().forEach(object -> reach(object.getRawType()));
        unit.getInstanceofChecks().forEach(check -> reach(check.getRawType()));
    }

    private static boolean overridesForeign(JavaMethod method) {
        for (JavaClass above : method.getOwner().getAllRawSuperclasses()) {
            if (!above.getName().startsWith("ringleaf.") && declares(above, method)) {
                return true;
            }
        }
        for (JavaClass above : method.getOwner().getAllRawInterfaces()) {
            if (!above.getName().startsWith("ringleaf.") && declares(above, method)) {
                return true;
            }
        }
        return false;
    }

    private static boolean declares(JavaClass above, JavaMethod method) {
        return above.getMethods().stream()
                .anyMatch(m -> m.getName().equals(method.getName())
                        && m.getRawParameterTypes().size()
                                == method.getRawParameterTypes().size());
    }

    private static String[] types(JavaMethod method) {
        return method.getRawParameterTypes().stream().map(JavaClass::getName).toArray(String[]::new);
    }

    /** Where the compiler keeps the numbers of an enum's values for a switch. */
    private static boolean isOfASwitch(JavaClass type) {
        return type.getModifiers().contains(JavaModifier.SYNTHETIC);
    }

    /** A class of nothing but constants that the compiler copies. */
    private static boolean isHolder(JavaClass type) {
        return type.getFields().stream().anyMatch(DeadCodeTest::isCopied)
                && type.getMethods().isEmpty();
    }

    private static boolean isMadeByTheCompiler(JavaCodeUnit unit) {
        Set<JavaModifier> modifiers = unit.getModifiers();
        return modifiers.contains(JavaModifier.SYNTHETIC)
                || modifiers.contains(JavaModifier.BRIDGE)
                || unit.getName().startsWith("lambda$")
                || unit.getName().equals("<clinit>")
                || unit.getOwner().isEnum()
                        && (unit.getName().equals("values") || unit.getName().equals("valueOf"))
                || unit.isConstructor() && unit.getParameters().isEmpty()
                || unit.getOwner().isRecord() && (unit.isConstructor() || isAccessor(unit));
    }

    /** Of a record what counts is whether a component is read at all, by whatever way. */
    private static boolean isAccessor(JavaCodeUnit unit) {
        return unit.getParameters().isEmpty()
                && unit.getOwner().tryGetField(unit.getName()).isPresent();
    }

    private static boolean isMadeByTheCompiler(JavaField field) {
        return field.getModifiers().contains(JavaModifier.SYNTHETIC);
    }

    private static boolean isCopied(JavaField field) {
        return field.getModifiers().contains(JavaModifier.STATIC)
                && field.getModifiers().contains(JavaModifier.FINAL)
                && (field.getRawType().isPrimitive() || field.getRawType().isEquivalentTo(String.class));
    }

    private static String name(JavaClass type) {
        return type.getName().replace("ringleaf.", "");
    }

    private static String name(JavaCodeUnit unit) {
        return unit.getFullName().replace("ringleaf.", "");
    }
}
