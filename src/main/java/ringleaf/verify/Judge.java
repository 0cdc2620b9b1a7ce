// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import ringleaf.geom.Point;
import ringleaf.part.Assembly;
import ringleaf.part.Finding;
import ringleaf.part.LeafFamily;
import ringleaf.part.Requirement;

/**
 * Judges an assembly by what it requires.
 *
 * <p>Judged are both ends of the travel, the states that the motion names as extreme or a requirement names, and nine
 * evenly between; all of them when thorough. Clearances, openings, rims and rooms are exact on lines and arcs; depths
 * of overlaps, leaks and necks are measured on polygons that stray by a part of the tolerance. A limit on a length
 * counts as held when no more than the tolerance is missing.
 */
public final class Judge {
    private final Scene scene;
    private final Options options;
    private final List<Check> checks = new ArrayList<>();
    private final List<Pose> poses = new ArrayList<>();
    private final Measure[][] measures;
    private final StateReport[] reports;
    private final AtomicInteger next = new AtomicInteger();
    private int done;

    private Judge(Assembly assembly, Options options) {
        this.scene = new Scene(assembly, options);
        this.options = options;
        for (Requirement requirement : assembly.requirements()) {
            checks.add(check(requirement));
        }
        if (BuildCheck.isAsked(scene)) {
            checks.add(new BuildCheck(scene));
        }
        measures = new Measure[checks.size()][scene.states.length];
        reports = new StateReport[scene.states.length];
    }

    /** The verdict on an assembly; the same for the same input, whatever the machine. */
    public static Verdict judge(Assembly assembly, Options options) {
        return new Judge(assembly, options).verdict();
    }

    private Verdict verdict() {
        for (int state : scene.states) {
            Pose pose = scene.pose(state);
            for (Check check : checks) {
                check.prepare(pose);
            }
            poses.add(pose);
        }
        measureAll();
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < checks.size(); i++) {
            checks.get(i).conclude(measures[i], findings);
        }
        return new Verdict(findings, List.of(reports));
    }

    /**
     * States do not depend on each other, nor on what needs no motion, so a second thread takes whatever is still
     * open: first what needs no motion, then the states.
     */
    private void measureAll() {
        AtomicReference<Throwable> failure = new AtomicReference<>();
        Thread second = new Thread(() -> measureOpen(failure), "judge");
        second.setDaemon(true);
        second.start();
        measureOpen(failure);
        try {
            second.join();
        } catch (InterruptedException e) {
            next.set(checks.size() + poses.size());
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while judging", e);
        }
        if (failure.get() != null) {
            throw new IllegalStateException("judging went wrong", failure.get());
        }
    }

    private void measureOpen(AtomicReference<Throwable> failure) {
        try {
            int open = checks.size() + poses.size();
            for (int i = next.getAndIncrement(); i < open; i = next.getAndIncrement()) {
                if (i < checks.size()) {
                    checks.get(i).still();
                } else {
                    measure(i - checks.size());
                }
            }
        } catch (RuntimeException | Error e) {
            failure.compareAndSet(null, e);
            next.set(checks.size() + poses.size());
        }
    }

    private void measure(int index) {
        Pose pose = poses.get(index);
        pose.place(scene);
        Figures figures = new Figures();
        Measure opening = OpensCheck.nearestLeaf(scene, pose, Point.ORIGIN);
        if (opening != null) {
            figures.inscribed = opening.value();
        }
        for (int i = 0; i < checks.size(); i++) {
            measures[i][index] = checks.get(i).measure(pose, figures);
        }
        reports[index] = figures.report(pose);
        pose.shapes = null;
        synchronized (this) {
            options.progress().judged(++done, poses.size());
        }
    }

    private Check check(Requirement r) {
        if (r instanceof Requirement.StaysApart apart) {
            return new ApartCheck(scene, apart);
        } else if (r instanceof Requirement.KeepsClear clear) {
            return new ClearCheck(scene, clear);
        } else if (r instanceof Requirement.OpensTo opens) {
            return new OpensCheck(scene, opens);
        } else if (r instanceof Requirement.StaysInside inside) {
            return new InsideCheck(scene, inside);
        } else if (r instanceof Requirement.PinInHole pin) {
            return new PinCheck(scene, pin);
        } else if (r instanceof Requirement.LeastWeb web) {
            return new WebCheck(scene, web);
        } else if (r instanceof Requirement.GuidedRim rim) {
            return new RimCheck(scene, rim);
        } else if (r instanceof Requirement.FitsDepth depth) {
            return new DepthCheck(scene, depth);
        } else if (r instanceof Requirement.StaysAbove above) {
            return new AboveCheck(scene, above);
        } else if (r instanceof Requirement.Rests rests) {
            return new RestsCheck(scene, rests);
        } else if (r instanceof Requirement.Engages engages) {
            return new EngagedCheck(scene, engages);
        } else if (r instanceof Requirement.Stops stops) {
            return new StopCheck(scene, stops);
        } else if (r instanceof Requirement.FitsWidth width) {
            return new WidthCheck(scene, width);
        } else if (r instanceof Requirement.FitsRound round) {
            return new RoundCheck(scene, round);
        } else if (r instanceof Requirement.Covered covered) {
            return new CoverCheck(scene, covered, leaves(covered));
        } else if (r instanceof Requirement.LeavesFit fit) {
            return new LayersCheck(scene, fit, leaves(fit));
        } else if (r instanceof Requirement.StudsClear studs) {
            return new StudCheck(scene, studs);
        } else if (r instanceof Requirement.Meshes mesh) {
            return new MeshCheck(scene, mesh);
        }
        throw new IllegalStateException("nobody judges " + r);
    }

    private LeafFamily leaves(Requirement asking) {
        return scene.assembly
                .leaves()
                .orElseThrow(() -> new IllegalArgumentException(asking.check() + " needs leaves and there are none"));
    }
}
