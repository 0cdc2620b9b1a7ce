// SPDX-License-Identifier: Apache-2.0
package ringleaf.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A mesh that bounds no solid is told of with the place. */
class MeshFaultTest {
    private final Mesh box = Bodies.box(2, 3, 4);

    @Test
    void closedMeshesHaveNoFault() {
        assertThat(MeshFault.of(box)).isEmpty();
        assertThat(box.volume()).isEqualTo(192);
        assertThat(MeshFault.of(Bodies.cone(3, 5, 24))).isEmpty();
        assertThat(MeshFault.of(Bodies.lump(new Random(4), 5, 16))).isEmpty();
        assertThat(MeshFault.of(Bodies.hollow(box, Bodies.sphere(1, 16)))).isEmpty();
    }

    @Test
    void holesAreToldWithAnEdge() {
        int[] fewer = Arrays.copyOf(box.triangles(), box.triangles().length - 3);
        MeshFault fault = MeshFault.of(new Mesh(box.corners(), fewer)).orElseThrow();
        assertThat(fault.kind()).isEqualTo(MeshFault.Kind.HOLE);
        assertThat(fault.count()).isEqualTo(3);
        // the triangle left out lies on the upper face
        assertThat(fault.from()[2]).isEqualTo(4);
        assertThat(fault.to()[2]).isEqualTo(4);
        assertThat(fault.words())
                .contains("there is a hole")
                .contains("3 such places")
                .contains("4.000)");
    }

    @Test
    void trianglesTurnedOverAreTold() {
        int[] folded = box.triangles().clone();
        int swap = folded[3];
        folded[3] = folded[4];
        folded[4] = swap;
        MeshFault fault = MeshFault.of(new Mesh(box.corners(), folded)).orElseThrow();
        assertThat(fault.kind()).isEqualTo(MeshFault.Kind.FOLDED);
        assertThat(fault.count()).isEqualTo(3);
    }

    @Test
    void surfacesThatFaceInwardsAreTold() {
        int[] inward = box.triangles().clone();
        for (int i = 0; i < inward.length; i += 3) {
            int swap = inward[i];
            inward[i] = inward[i + 1];
            inward[i + 1] = swap;
        }
        assertThat(MeshFault.of(new Mesh(box.corners(), inward)).orElseThrow().kind())
                .isEqualTo(MeshFault.Kind.INSIDE_OUT);
    }

    @Test
    void numbersThatAreNoneAreToldWithTheTriangle() {
        double[] corners = box.corners().clone();
        corners[7] = Double.NaN;
        MeshFault fault = MeshFault.of(new Mesh(corners, box.triangles())).orElseThrow();
        assertThat(fault.kind()).isEqualTo(MeshFault.Kind.NO_NUMBER);
        assertThat(fault.words()).contains("no number").contains("NaN");
        corners[7] = Double.POSITIVE_INFINITY;
        assertThatThrownBy(() -> new Solid(new Mesh(corners, box.triangles()), 0))
                .hasMessageContaining("no number")
                .hasMessageContaining("triangle ");
    }

    @Test
    void cornersThatAreNotThereOrTwiceAreTold() {
        int[] beyond = box.triangles().clone();
        beyond[5] = 99;
        assertThat(MeshFault.of(new Mesh(box.corners(), beyond)).orElseThrow().kind())
                .isEqualTo(MeshFault.Kind.NO_SUCH_CORNER);
        int[] twice = box.triangles().clone();
        twice[5] = twice[3];
        assertThat(MeshFault.of(new Mesh(box.corners(), twice)).orElseThrow().kind())
                .isEqualTo(MeshFault.Kind.REPEATED_CORNER);
        assertThat(MeshFault.of(new Mesh(new double[0], new int[0]))
                        .orElseThrow()
                        .words())
                .isEqualTo("has no triangles");
    }
}
