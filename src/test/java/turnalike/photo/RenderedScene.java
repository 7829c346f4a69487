package turnalike.photo;

import java.awt.image.BufferedImage;

/** A scene that POV-Ray renders, and what the camera does to it afterwards. */
interface RenderedScene {
    String name();

    /** The scene in POV-Ray's words. */
    String pov();

    /** The picture's width in pixels. */
    int width();

    /** Its height. */
    int height();

    /** The angle of view across the width as the camera's data have it, degrees. */
    double view();

    /** Of the lens, standard deviation in pixels. */
    double blur();

    /** Of each pixel, standard deviation in codes of 255. */
    double noise();

    /** How wide it is rendered: more than the picture, where the lens bends. */
    default int renderedWidth() {
        return width();
    }

    /** How high it is rendered. */
    default int renderedHeight() {
        return height();
    }

    /** The picture as the lens has it. */
    default BufferedImage lens(BufferedImage rendered) {
        return rendered;
    }
}
