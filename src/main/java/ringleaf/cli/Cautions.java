// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.part.Design;
import ringleaf.part.Part;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.MakingProcess;
import ringleaf.spec.shared.Servo;
import ringleaf.spec.shared.Stock;

/** What to look out for with the processes, stocks and servos that a design uses, each thing said once. */
final class Cautions {
    private final Catalogues catalogues;
    private final Map<String, List<String>> names = new LinkedHashMap<>();

    private Cautions(Catalogues catalogues) {
        this.catalogues = catalogues;
    }

    /** A line for each caution, with the names of what it is about in front. */
    static List<String> of(List<Judged> all, Catalogues catalogues) {
        Cautions cautions = new Cautions(catalogues);
        for (Judged judged : all) {
            cautions.add(judged.design());
        }
        List<String> lines = new ArrayList<>();
        for (Map.Entry<String, List<String>> each : cautions.names.entrySet()) {
            lines.add(String.join(", ", each.getValue()) + ": " + each.getKey());
        }
        return lines;
    }

    /** How many there are and of what, and where they stand. */
    static String brief(List<String> cautions) {
        List<String> about = new ArrayList<>();
        for (String caution : cautions) {
            for (String name : caution.substring(0, caution.indexOf(": ")).split(", ")) {
                if (!about.contains(name)) {
                    about.add(name);
                }
            }
        }
        return (cautions.size() == 1 ? "1 caution" : cautions.size() + " cautions") + " (" + String.join(", ", about)
                + "): read report.html, or --details, before you start a machine";
    }

    private void add(Design design) {
        for (Part part : design.parts()) {
            if (!part.source().isBought()) {
                process(part.source().process());
                stock(part.source().stock());
            } else if (part.name().equals("servo")) {
                servo(part.source().stock());
            }
        }
    }

    private void process(String name) {
        Optional<MakingProcess> process = catalogues.processes().get(name);
        if (process.isPresent()) {
            add(name, process.get().cautions());
        }
    }

    private void stock(String name) {
        Optional<Stock> stock = catalogues.stock().get(name);
        if (stock.isPresent()) {
            add(name, stock.get().cautions());
        }
    }

    /** A bought servo is described by its name first; one written out in the spec is as dangerous as its class. */
    private void servo(String words) {
        int end = words.indexOf(',');
        String name = end < 0 ? words : words.substring(0, end);
        Optional<Servo> servo =
                catalogues.servos().get(catalogues.servos().names().contains(name) ? name : Servo.STAND_IN);
        if (servo.isPresent()) {
            add(name, servo.get().cautions());
        }
    }

    private void add(String name, List<String> cautions) {
        for (String caution : cautions) {
            List<String> about = names.computeIfAbsent(caution, c -> new ArrayList<>());
            if (!about.contains(name)) {
                about.add(name);
            }
        }
    }
}
