package turnalike.photo;

import java.util.function.DoubleConsumer;
import javax.imageio.ImageReader;
import javax.imageio.event.IIOReadProgressListener;

/** Of all that a reader tells while it reads, what share is done. */
record DecodingProgress(DoubleConsumer percent) implements IIOReadProgressListener {
    @Override
    public void imageProgress(ImageReader source, float percentageDone) {
        percent.accept(percentageDone);
    }

    @Override
    public void sequenceStarted(ImageReader source, int minIndex) {}

    @Override
    public void sequenceComplete(ImageReader source) {}

    @Override
    public void imageStarted(ImageReader source, int imageIndex) {}

    @Override
    public void imageComplete(ImageReader source) {}

    @Override
    public void thumbnailStarted(ImageReader source, int imageIndex, int thumbnailIndex) {}

    @Override
    public void thumbnailProgress(ImageReader source, float percentageDone) {}

    @Override
    public void thumbnailComplete(ImageReader source) {}

    @Override
    public void readAborted(ImageReader source) {}
}
