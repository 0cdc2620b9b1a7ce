// SPDX-License-Identifier: Apache-2.0
package ringleaf.coupon;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.SpecSource;

/** A sheet that was filled in; lengths in mm. Every value keeps its place, so that what contradicts can be shown. */
public final class Filled {
    private final SpecSource source;
    private final Coupon coupon;
    private final Instrument outside;
    private final Instrument inside;
    private final Map<String, Reading> readings = new LinkedHashMap<>();
    private final Map<String, Answer> answers = new LinkedHashMap<>();

    /**
     * An instrument.
     *
     * @param step the smallest that it shows, mm
     * @param error that its maker allows, either way, mm
     */
    public record Instrument(double step, double error) {}

    /** Repeated readings of one size, mm, with the places of each. */
    record Reading(List<Double> values, List<Place> places, Place place) {
        Reading {
            values = List.copyOf(values);
            places = List.copyOf(places);
        }

        double mean() {
            double sum = 0;
            for (double value : values) {
                sum += value;
            }
            return sum / values.size();
        }

        /** Sum of squares about the mean, mm². */
        double scatter() {
            double mean = mean();
            double sum = 0;
            for (double value : values) {
                sum += (value - mean) * (value - mean);
            }
            return sum;
        }
    }

    /** A word that was filled in: yes, no, none or the name of a feature. */
    record Answer(String word, Place place) {}

    Filled(SpecSource source, Coupon coupon, Instrument outside, Instrument inside) {
        this.source = source;
        this.coupon = coupon;
        this.outside = outside;
        this.inside = inside;
    }

    void read(String feature, Reading reading) {
        readings.put(feature, reading);
    }

    void answer(String question, Answer answer) {
        answers.put(question, answer);
    }

    public Coupon coupon() {
        return coupon;
    }

    SpecSource source() {
        return source;
    }

    Instrument instrument(Feature feature) {
        return feature.kind().isOutside() ? outside : inside;
    }

    Instrument outside() {
        return outside;
    }

    Instrument inside() {
        return inside;
    }

    /** The readings of a feature or of the pin; null where it could not be measured. */
    Reading reading(String name) {
        return readings.get(name);
    }

    /** The features that were measured, in the order of the sheet. */
    List<Feature> measured() {
        List<Feature> all = new ArrayList<>();
        for (Feature feature : coupon.features()) {
            if (readings.containsKey(feature.name())) {
                all.add(feature);
            }
        }
        return all;
    }

    /** What was answered; null where nothing was. */
    Answer answer(String question) {
        return answers.get(question);
    }

    /** The feature that an answer names; null for none. */
    Feature chosen(String question) {
        Answer answer = answers.get(question);
        return answer == null ? null : coupon.named(answer.word());
    }

    /** How many readings there are. */
    public int count() {
        int count = 0;
        for (Reading reading : readings.values()) {
            count += reading.values().size();
        }
        return count;
    }
}
