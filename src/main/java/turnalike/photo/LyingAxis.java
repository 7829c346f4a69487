package turnalike.photo;

/**
 * Where the axis of a piece lies above the sheet, when its picture's axis and the shape of the piece are known up to its size. A round piece rests
 * on the two thickest places that a straightedge along it would touch, those on either side of its middle of mass; where they differ in
 * thickness the axis leans against the sheet.
 *
 * @param distanceMm from the camera to the axis
 * @param tilt of the axis as {@link Sight} counts it, radians
 */
record LyingAxis(double distanceMm, double tilt) {
    /**
     * What it rests on.
     *
     * @param along place of one resting place along the axis, from the foot of the perpendicular out of the camera, in units of the distance
     * @param radius of the piece there, in the same units
     * @param slope how much the radius grows from there to the other resting place, per length
     */
    record Rest(double along, double radius, double slope) {}

    /** Lying on the sheet's plane. */
    static LyingAxis resting(SheetView sheet, Sight sight, Rest rest) {
        double lean = Math.atan(rest.slope());
        double tilt = tilt(sheet, sight, lean);
        double[] towards = sight.towards(tilt);
        double[] along = sight.along(tilt);
        double[] up = sheet.up();
        double rise = dot(along, up);
        double distance = sheet.cameraMm() / (rest.radius() * Math.cos(lean) - dot(towards, up) - rest.along() * rise);
        return new LyingAxis(distance, tilt);
    }

    /** Held level so high above the sheet. */
    static LyingAxis held(SheetView sheet, Sight sight, double heightMm) {
        double tilt = tilt(sheet, sight, 0);
        return new LyingAxis((sheet.cameraMm() - heightMm) / -dot(sight.towards(tilt), sheet.up()), tilt);
    }

    /** The tilt at which the axis, whose picture is known, rises so steeply from the sheet. */
    private static double tilt(SheetView sheet, Sight sight, double lean) {
        double[] up = sheet.up();
        // Along the axis the rise is cos(t)·beside·up − sin(t)·nearest·up, which is to be sin(lean).
        double beside = dot(sight.along(0), up);
        double nearest = dot(sight.towards(0), up);
        double size = Math.hypot(beside, nearest);
        double share = Math.max(-1, Math.min(1, Math.sin(lean) / size));
        // size·cos(t + a) with a = atan2(nearest, beside); nearest looks down on the sheet, so the smaller turn is this
        // one.
        double tilt = -Math.acos(share) - Math.atan2(nearest, beside);
        return Math.IEEEremainder(tilt, 2 * Math.PI);
    }

    /**
     * What a piece of this shape rests on.
     *
     * @param outline the shape
     * @param share by what the radius is to be multiplied at each step: below 1 where it lies on a flat
     */
    static Rest rest(RoundOutline outline, double[] share) {
        int n = outline.count();
        double mass = 0;
        double moment = 0;
        double[] radius = new double[n];
        for (int k = 0; k < n; k++) {
            radius[k] = outline.radiusUnits(k) * share[k];
            mass += radius[k] * radius[k];
            moment += radius[k] * radius[k] * k;
        }
        double middle = moment / Math.max(1e-12, mass);
        int[] hull = new int[n];
        int size = 0;
        for (int k = 0; k < n; k++) {
            while (size >= 2 && isBelow(radius, hull[size - 2], hull[size - 1], k)) {
                size--;
            }
            hull[size++] = k;
        }
        int edge = 0;
        while (edge < size - 2 && hull[edge + 1] < middle) {
            edge++;
        }
        int from = hull[edge];
        int to = hull[edge + 1];
        double step = outline.alongUnits(1) - outline.alongUnits(0);
        return new Rest(outline.alongUnits(from), radius[from], (radius[to] - radius[from]) / ((to - from) * step));
    }

    /** Whether the middle one of three lies on or below the line through the other two. */
    private static boolean isBelow(double[] radius, int one, int middle, int other) {
        return (radius[middle] - radius[one]) * (other - one) <= (radius[other] - radius[one]) * (middle - one);
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }
}
