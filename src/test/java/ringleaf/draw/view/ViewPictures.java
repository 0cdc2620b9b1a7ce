// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.view;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/** Writes the views of the made-up shutter into a folder, to be looked at. */
final class ViewPictures {
    private ViewPictures() {}

    public static void main(String[] args) throws Exception {
        Path folder = Files.createDirectories(Path.of(args[0]));
        for (int count : new int[] {12, 15}) {
            Map<String, byte[]> views = AssemblyViews.all(
                    "Harbour light, shutter",
                    MovingView.of(new MadeUpShutter(count, 27).build()),
                    state -> "state " + state);
            for (Map.Entry<String, byte[]> view : views.entrySet()) {
                Files.write(folder.resolve(count + "-" + view.getKey() + ".svg"), view.getValue());
            }
        }
    }
}
