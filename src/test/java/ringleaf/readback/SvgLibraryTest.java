// SPDX-License-Identifier: Apache-2.0
package ringleaf.readback;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.view.FloatSize;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayInputStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringleaf.draw.Drawings;
import ringleaf.draw.svg.SvgWriter;
import ringleaf.geom.Box;
import ringleaf.part.Part;

/** A public library (JSVG) reads every sample, at the size that it has. */
class SvgLibraryTest {
    /** CSS Values and Units, absolute lengths: 96 px to 25.4 mm. */
    private static final double PIXELS = 96 / 25.4;

    /** The library takes a millimetre for 2.6e-4 less than that (measured). */
    private static final double MM_OF_LIBRARY = 3e-4;

    static Stream<Part> parts() {
        return Samples.all(11).stream();
    }

    @ParameterizedTest
    @MethodSource("parts")
    void sizeAndOutlineArrive(Part part) {
        byte[] file = SvgWriter.write(Drawings.of(part));
        SVGDocument document =
                new SVGLoader().load(new ByteArrayInputStream(file), null, LoaderContext.createDefault());
        assertThat(document).isNotNull();
        Box box = part.box();
        FloatSize size = document.size();
        assertThat(size.getWidth() / PIXELS).isEqualTo(box.width() + 2, within(MM_OF_LIBRARY * (box.width() + 2)));
        assertThat(size.getHeight() / PIXELS).isEqualTo(box.height() + 2, within(MM_OF_LIBRARY * (box.height() + 2)));
        Rectangle2D shape = document.computeShape().getBounds2D();
        // The library works in single precision and strokes the outline (0.1 mm).
        assertThat(shape.getWidth() / PIXELS).isEqualTo(box.width(), within(0.15 + MM_OF_LIBRARY * box.width()));
        assertThat(shape.getHeight() / PIXELS).isEqualTo(box.height(), within(0.15 + MM_OF_LIBRARY * box.height()));
    }
}
