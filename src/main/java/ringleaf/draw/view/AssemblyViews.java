package ringleaf.draw.view;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.IntFunction;
import ringleaf.part.Assembly;

/**
 * The pictures of an assembly: {@code open}, {@code half} and {@code closed} as seen from +z at the first, middle and
 * last state, and {@code exploded}.
 *
 * <p>Leaves are taken to be in laying order, as {@link ringleaf.part.LeafFamily} says: where two neighbours overlap,
 * the later one lies over the earlier one, all the way round.
 */
public final class AssemblyViews {
    private AssemblyViews() {}

    /**
     * All views by name, as SVG files in UTF-8; the same assembly gives the same bytes.
     *
     * @param title a line above each picture
     * @param assembly with at least one member that has an outline
     * @param captions what to say of a state in a few words, or an empty text
     */
    public static Map<String, byte[]> all(String title, Assembly assembly, IntFunction<String> captions) {
        Scene scene = new Scene(assembly);
        Map<String, byte[]> views = new LinkedHashMap<>();
        int half = scene.halfState();
        int last = scene.lastState();
        views.put("open", PlanView.draw(scene, title, "open", 0, captions.apply(0)));
        views.put("half", PlanView.draw(scene, title, "half", half, captions.apply(half)));
        views.put("closed", PlanView.draw(scene, title, "closed", last, captions.apply(last)));
        views.put("exploded", ExplodedView.draw(scene, title));
        return views;
    }
}
