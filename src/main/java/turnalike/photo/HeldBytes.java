package turnalike.photo;

import javax.imageio.stream.ImageInputStreamImpl;

/** Bytes that are held anyway as Java's readers want them. The stream that Java makes of an array keeps a second copy of all it has read. */
final class HeldBytes extends ImageInputStreamImpl {
    private final byte[] bytes;

    HeldBytes(byte[] bytes) {
        this.bytes = bytes;
    }

    @Override
    public int read() {
        bitOffset = 0;
        return streamPos < bytes.length ? bytes[(int) streamPos++] & 0xFF : -1;
    }

    @Override
    public int read(byte[] to, int from, int count) {
        bitOffset = 0;
        int left = (int) Math.min(count, bytes.length - streamPos);
        if (left <= 0) {
            return count == 0 ? 0 : -1;
        }
        System.arraycopy(bytes, (int) streamPos, to, from, left);
        streamPos += left;
        return left;
    }

    @Override
    public long length() {
        return bytes.length;
    }
}
