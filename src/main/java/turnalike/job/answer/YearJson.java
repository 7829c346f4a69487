package turnalike.job.answer;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import turnalike.job.YearOfJoints;
import turnalike.year.Joint;
import turnalike.year.JointYear;

/** The joints through the year, as the {@code joints} of a plan's JSON. */
final class YearJson {
    private YearJson() {}

    static void write(ObjectNode root, YearOfJoints year) {
        root.putObject("home")
                .put("dry_pct", year.home().dry().moisture().pct())
                .put("damp_pct", year.home().damp().moisture().pct());
        ArrayNode joints = root.putArray("joints");
        year.stands().forEach(stand -> joint(joints.addObject(), stand));
    }

    private static void joint(ObjectNode node, YearOfJoints.Stand stand) {
        JointYear year = stand.year();
        Joint joint = year.joint();
        node.put("tenon", stand.tenon().number() - 1);
        node.put("in", stand.hole());
        node.put("tenon_mm", joint.tenon().mm());
        node.put("hole_mm", joint.hole().mm());
        node.put("made_pct", joint.tenonWood().made().pct());
        node.put("hole_made_pct", joint.holeWood().made().pct());
        season(node.putObject("dry"), year.dry());
        season(node.putObject("damp"), year.damp());
        node.put("hole_dry_mm", year.dry().holeAcross().mm());
        node.put("hole_damp_mm", year.damp().holeAcross().mm());
        node.put("tightest_mm", year.tightest().mm());
        node.put("tightest_when", year.tightestInDry() ? "dry" : "damp");
        node.put("loosest_mm", year.loosest().mm());
        node.put("loosest_when", year.loosestInDry() ? "dry" : "damp");
        node.putObject("rings_across")
                .put("tightest_mm", year.tightestRingsAcross().mm())
                .put("loosest_mm", year.loosestRingsAcross().mm());
        joint.snugMoisture(year.home()).ifPresent(moisture -> node.put("tight_from_pct", moisture.pct()));
        node.put("tight_tenon_mm", joint.snugDiameter(year.home()).mm());
    }

    private static void season(ObjectNode node, Joint.Sizes sizes) {
        node.put("pct", sizes.moisture().pct());
        node.put("tangential_mm", sizes.tangential().mm());
        node.put("radial_mm", sizes.radial().mm());
    }
}
