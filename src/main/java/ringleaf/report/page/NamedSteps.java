package ringleaf.report.page;

import java.util.ArrayList;
import java.util.List;
import ringleaf.part.Assembly;
import ringleaf.part.Member;

/**
 * Steps of a build order that is told in sentences only: a part goes on in the first sentence that says to put it
 * somewhere, which is the first that names it after preparing words such as pins set into blades; a part that no
 * sentence names goes on with the last step.
 */
final class NamedSteps {
    private NamedSteps() {}

    static List<BuildStep> of(Assembly assembly) {
        List<String> sentences = assembly.buildOrder();
        int[] step = new int[assembly.members().size()];
        for (int i = 0; i < step.length; i++) {
            step[i] = sentences.size() - 1;
            for (int s = sentences.size() - 1; s >= 0; s--) {
                step[i] = names(sentences.get(s), assembly.members().get(i)) ? s : step[i];
            }
        }
        List<BuildStep> steps = new ArrayList<>();
        for (int s = 0; s < sentences.size(); s++) {
            List<Integer> added = new ArrayList<>();
            for (int i = 0; i < step.length; i++) {
                if (step[i] == s) {
                    added.add(i);
                }
            }
            steps.add(new BuildStep(sentences.get(s), added, List.of()));
        }
        return steps;
    }

    private static boolean names(String sentence, Member member) {
        String name = member.part().name().replace('-', ' ');
        int at = sentence.indexOf(name);
        return at >= 0 && (at == 0 || !Character.isLetter(sentence.charAt(at - 1)));
    }
}
