package turnalike.photo;

import com.drew.lang.ByteArrayReader;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifDirectoryBase;
import com.drew.metadata.exif.ExifReader;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the camera wrote about the picture.
 *
 * @param orientation how the stored picture is to be turned, 1 to 8 as the EXIF standard counts, 1 for upright
 * @param equivalentMm the focal length as if the film were 36 by 24 mm; the standard leaves open whether by its diagonal or its width
 */
record CameraData(int orientation, OptionalDouble equivalentMm) {
    static final CameraData NONE = new CameraData(1, OptionalDouble.empty());

    /** Never fails: what cannot be read is as if it were not there. */
    static CameraData of(Optional<byte[]> exif) {
        return exif.map(CameraData::read).orElse(NONE);
    }

    private static CameraData read(byte[] exif) {
        Metadata metadata = new Metadata();
        new ExifReader().extract(new ByteArrayReader(exif), metadata);
        int orientation = 1;
        OptionalDouble focal = OptionalDouble.empty();
        for (ExifDirectoryBase directory : metadata.getDirectoriesOfType(ExifDirectoryBase.class)) {
            // The first directory speaks of the picture, later ones of its thumbnail.
            Integer turned = directory.getInteger(ExifDirectoryBase.TAG_ORIENTATION);
            if (orientation == 1 && turned != null && turned >= 1 && turned <= 8) {
                orientation = turned;
            }
            Double mm = directory.getDoubleObject(ExifDirectoryBase.TAG_35MM_FILM_EQUIV_FOCAL_LENGTH);
            if (focal.isEmpty() && mm != null && mm >= 8 && mm <= 1200) {
                focal = OptionalDouble.of(mm);
            }
        }
        return new CameraData(orientation, focal);
    }
}
