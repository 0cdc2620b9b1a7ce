package ringleaf.verify;

import ringleaf.geom.Point;

/** Who and where; put into words only when it is reported. Either may be absent: an empty name, no point. */
record Place(String who, Point at) {
    static final Place NONE = new Place("", null);

    String words() {
        if (at == null) {
            return who;
        }
        return who.isEmpty() ? Words.at(at) : who + ", " + Words.at(at);
    }
}
