package turnalike.fuzz;

import java.nio.ByteBuffer;
import java.util.zip.CRC32;
import turnalike.effort.Effort;
import turnalike.photo.PhotoTrace;
import turnalike.photo.PhotoWish;
import turnalike.units.Length;

/**
 * Whatever a picture's file holds (JPEG, PNG, the camera's data in either) is a profile or a refusal in words. A PNG is given once as it is
 * and once with its check sums put right, so that what they guard is reached.
 */
public final class PhotoFuzz {
    private static final int SIGNATURE = 8;
    private static final int FRAME = 12;

    private PhotoFuzz() {}

    /** The fuzzer's way in. */
    public static void fuzzerTestOneInput(byte[] input) {
        answered(input);
        answered(summed(input));
    }

    private static void answered(byte[] picture) {
        PhotoTrace answer = PhotoTrace.of(picture, PhotoWish.ofSpan(Length.ofMm(400)), Effort.unlimited());
        if (answer instanceof PhotoTrace.NotSure unsure) {
            Fuzz.require(!unsure.what().isBlank() && !unsure.mend().isBlank(), "a refusal that says nothing");
            Fuzz.require(unsure.what().indexOf('\n') < 0, "a refusal on two lines");
        } else {
            PhotoTrace.Traced traced = (PhotoTrace.Traced) answer;
            Fuzz.require(traced.profile().length().mm() == 400, "another length than was given");
        }
    }

    /** The same with the sum of every chunk that lies within the file. */
    private static byte[] summed(byte[] png) {
        byte[] out = png.clone();
        ByteBuffer buffer = ByteBuffer.wrap(out);
        int at = SIGNATURE;
        while (at + FRAME <= out.length) {
            int length = buffer.getInt(at);
            if (length < 0 || (long) at + FRAME + length > out.length) {
                break;
            }
            CRC32 sum = new CRC32();
            sum.update(out, at + 4, length + 4);
            buffer.putInt(at + 8 + length, (int) sum.getValue());
            at += FRAME + length;
        }
        return out;
    }
}
