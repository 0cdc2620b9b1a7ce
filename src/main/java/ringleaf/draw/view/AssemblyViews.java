// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.view;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.IntFunction;
import ringleaf.part.Assembly;
import ringleaf.part.View;

/**
 * The pictures of an assembly: those it asks for as seen from +z (as a rule {@code open}, {@code half} and {@code
 * closed}, the first, middle and last state), and {@code exploded}.
 *
 * <p>Leaves are taken to be in laying order, as {@link ringleaf.part.LeafFamily} says: where two neighbours overlap,
 * the later one lies over the earlier one, all the way round.
 */
public final class AssemblyViews {
    private AssemblyViews() {}

    /** The same of an assembly that is shown on a page too. */
    public static Map<String, byte[]> all(String title, MovingView shared, IntFunction<String> captions) {
        Scene scene = shared.scene();
        Assembly assembly = scene.assembly();
        Map<String, byte[]> views = new LinkedHashMap<>();
        for (View view : assembly.views()) {
            String caption = view.caption().isEmpty() ? captions.apply(view.state()) : view.caption();
            views.put(view.name(), PlanView.draw(scene, title, view, caption));
        }
        views.put("exploded", ExplodedView.draw(scene, title));
        return views;
    }
}
